package rakeline.study.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.geometry.Geometry;
import rakeline.geometry.Measures;
import rakeline.geometry.parts.Bound;
import rakeline.geometry.parts.Stock;
import rakeline.quantity.Decimals;
import rakeline.quantity.Limit;
import rakeline.quantity.Measure;
import rakeline.quantity.Nearest;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;

/** The limits that a fitted bike is held against: those declared with the measures, unless the stock sets others. */
final class Bounds {
    private record Line(Measure<Geometry> measure, Limit limit) {
        Optional<Margin> margin(Geometry geometry, double uncertaintyOrNaN) {
            double sure = Double.isNaN(uncertaintyOrNaN) ? 0 : uncertaintyOrNaN;
            return measure.read(geometry) instanceof Reading.Known known
                    ? Optional.of(new Margin(measure.quantity(), limit, limit.leftOf(known.value()), sure))
                    : Optional.empty();
        }
    }

    private final Map<Concern, List<Line>> lines = new EnumMap<>(Concern.class);

    private Bounds(Stock stock, boolean forkSaysItsLimit) {
        for (Concern concern : Concern.values()) {
            lines.put(concern, lines(concern, stock, forkSaysItsLimit));
        }
    }

    /**
     * The limits for a stock.
     *
     * @param forkSaysItsLimit whether the spacers allowed are the fork's own, or the stock's usual figure
     * @throws Refusal for a limit on what no limit can be set for
     */
    static Bounds of(Stock stock, boolean forkSaysItsLimit) {
        stock.bounds().forEach(Bounds::check);
        return new Bounds(stock, forkSaysItsLimit);
    }

    /** What a bike as built has left to each limit that it has a number for. */
    List<Margin> margins(Concern concern, Geometry geometry) {
        List<Line> all = lines.get(concern);
        Map<String, Double> uncertainties = Errors.standardOf(
                geometry.bike(),
                all.stream().<Measure<Geometry>>map(Line::measure).distinct().toList());
        return all.stream()
                .flatMap(line ->
                        line.margin(geometry, uncertainties.get(line.measure().key())).stream())
                .toList();
    }

    private static List<Line> lines(Concern concern, Stock stock, boolean forkSaysItsLimit) {
        List<Line> all = new ArrayList<>();
        concern.usual().stream()
                .filter(measure ->
                        stock.bounds().stream().noneMatch(bound -> bound.key().equals(measure.key())))
                .map(measure -> new Line(measure, usual(measure, stock, forkSaysItsLimit)))
                .forEach(all::add);
        stock.bounds().stream()
                .filter(bound -> concern.measures().containsKey(bound.key()))
                .map(bound -> new Line(concern.measures().get(bound.key()), bound.limit()))
                .forEach(all::add);
        if (concern == Concern.COCKPIT) {
            all.add(new Line(FitQuantities.SPACERS_BELOW, FitQuantities.NONE_BELOW));
        }
        return List.copyOf(all);
    }

    private static Limit usual(Measure<Geometry> measure, Stock stock, boolean forkSaysItsLimit) {
        Limit declared = measure.quantity().limits().get(0);
        return measure.equals(Measures.SPACERS_LEFT) && !forkSaysItsLimit
                ? new Limit(
                        0,
                        "spacers below the stem",
                        Decimals.shortest(stock.spacerLimitMm()) + " mm of spacers by the parts' own figure, usually"
                                + " 30 by common practice; the fork maker's limit wins")
                : declared;
    }

    private static void check(Bound bound) {
        List<String> known = Stream.of(Concern.values())
                .flatMap(concern -> concern.measures().keySet().stream())
                .toList();
        if (!known.contains(bound.key())) {
            throw new Refusal("a limit on " + bound.key() + " cannot rank parts; accepted are "
                    + String.join(", ", known) + Nearest.hint(bound.key(), known));
        }
    }
}
