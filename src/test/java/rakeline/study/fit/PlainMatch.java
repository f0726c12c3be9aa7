package rakeline.study.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Refit;
import rakeline.geometry.ToeMeasures;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Part;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Reading;

/** The plain search: each combination's bike is built, its measures are read, and all are sorted. */
public final class PlainMatch {
    private static final List<Measure<Geometry>> ABOVE_ZERO = List.of(
            Measures.SPACERS_LEFT,
            Measures.STEERER_LEFT,
            Measures.POST_EXTENSION,
            Measures.POST_INSERTION_LEFT,
            Measures.POST_DEPTH_LEFT,
            Measures.RAIL_LEFT);

    /** A combination, as the plain search ranks it. */
    public record Found(Bike bike, int exceeded, double distanceMm, Map<String, Double> parts) {}

    private PlainMatch() {}

    /** Every combination of a match with a known sit point and the usual limits, best first. */
    public static List<Found> all(Match match, boolean withToes) {
        List<Found> found = new ArrayList<>();
        Bike base = match.wanted().on(match.bike());
        for (Map<Input, Double> parts : combinations(match, Category.values())) {
            found.add(found(match, built(match, base, parts), parts, withToes));
        }
        found.sort(Comparator.comparingInt(Found::exceeded)
                .thenComparingDouble(Found::distanceMm)
                .thenComparingDouble(one -> one.bike().get(Inputs.SPACERS))
                .thenComparingDouble(one -> one.bike().get(Inputs.STEM_LENGTH))
                .thenComparing(Found::parts, PlainMatch::byKeys));
        return found;
    }

    private static Bike built(Match match, Bike base, Map<Input, Double> parts) {
        Map<Input, Double> exchanged = new HashMap<>();
        Map<Input, Double> others = new HashMap<>();
        parts.forEach((input, value) -> {
            boolean fork = input.key().startsWith("fork.") || input.key().startsWith("wheels.");
            (fork ? exchanged : others).put(input, value);
        });
        Bike fitted = exchanged.isEmpty() ? base : Refit.of(base, exchanged).bike();
        Bike limited = fitted.has(Inputs.SPACER_LIMIT)
                ? fitted
                : fitted.with(Inputs.SPACER_LIMIT, match.stock().spacerLimitMm());
        return limited.redraw(new Part(others).on(limited));
    }

    private static Found found(Match match, Bike bike, Map<Input, Double> parts, boolean withToes) {
        Geometry geometry = Geometry.of(bike);
        double dx =
                Measures.HAND_X.read(geometry).orNaN() - match.wanted().hand().x();
        double dy =
                Measures.HAND_Y.read(geometry).orNaN() - match.wanted().hand().y();
        int exceeded = (int) ABOVE_ZERO.stream()
                .filter(measure -> isBelow(measure, geometry, 0))
                .count();
        if (withToes) {
            exceeded += isBelow(ToeMeasures.TOE_ROOM, geometry, 0) ? 1 : 0;
            exceeded += isBelow(ToeMeasures.PEDAL_STRIKE_LEAN, geometry, 25) ? 1 : 0;
        }
        Map<String, Double> byKey = new TreeMap<>();
        parts.forEach((input, value) -> byKey.put(input.key(), value));
        return new Found(bike, exceeded, Math.hypot(dx, dy), byKey);
    }

    private static boolean isBelow(Measure<Geometry> measure, Geometry geometry, double limit) {
        return measure.read(geometry) instanceof Reading.Known known && known.value() < limit;
    }

    private static List<Map<Input, Double>> combinations(Match match, Category... categories) {
        List<Map<Input, Double>> all = List.of(Map.of());
        for (Category category : categories) {
            List<Map<Input, Double>> more = new ArrayList<>();
            for (Map<Input, Double> one : all) {
                for (Part part : match.stock().choices(category)) {
                    Map<Input, Double> with = new HashMap<>(one);
                    with.putAll(part.numbers());
                    more.add(with);
                }
            }
            all = more;
        }
        return all;
    }

    /** In the order of the keys, the smaller number first. */
    private static int byKeys(Map<String, Double> one, Map<String, Double> other) {
        return one.keySet().stream()
                .map(key -> Double.compare(one.get(key), other.get(key)))
                .filter(order -> order != 0)
                .findFirst()
                .orElse(0);
    }
}
