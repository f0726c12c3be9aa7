package rakeline.shell.rack;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.figure.BikeDrawing;
import rakeline.figure.ComparisonTable;
import rakeline.figure.Figure;
import rakeline.figure.LimitTable;
import rakeline.figure.MatchTable;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Ride;
import rakeline.quantity.Refusal;
import rakeline.study.Progress;
import rakeline.study.Vocabulary;
import rakeline.study.fit.Comparison;
import rakeline.study.fit.Contender;
import rakeline.study.fit.Left;
import rakeline.study.fit.Match;
import rakeline.study.fit.Matched;
import rakeline.study.fit.Option;
import rakeline.study.fit.Wanted;

/**
 * Bikes of the rack put side by side, or matched to contact points.
 *
 * @param contact whose contact points are put on all; empty for each bike's own
 * @param stock parts that the hands are matched with; empty to leave stem and spacers as they are
 * @param only the keys of the numbers that are compared; empty for all
 * @param lengths the unit in which lengths are shown
 */
record Pairing(
        List<Bike> bikes,
        RackSeat seat,
        Optional<Wanted> contact,
        Optional<Stock> stock,
        List<String> only,
        LengthUnit lengths) {
    private static final int OPTIONS = 10;

    /** What a match found for one bike: the table of the options, and the bikes that they make. */
    record Options(Bike of, Figure table, List<Bike> bikes) {
        Options {
            bikes = List.copyOf(bikes);
        }
    }

    Pairing {
        bikes = List.copyOf(bikes);
        only = List.copyOf(only);
    }

    /**
     * The comparison, the side views laid over each other, and what is left to each limit.
     *
     * @throws Refusal for fewer than two bikes
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    List<Figure> compared(BikeDrawing.At at, Progress progress) {
        List<Ride> rides = each(this::ride, progress).toList();
        List<Contender> contenders = IntStream.range(0, rides.size())
                .mapToObj(i -> new Contender(rides.get(i), i))
                .toList();
        Comparison comparison = Comparison.of(
                Vocabulary.standard(),
                contenders,
                List.of(seat.hands()),
                contact.map(Wanted::from),
                seat.rider().isPresent(),
                only);
        return List.of(
                ComparisonTable.brief(comparison, new Labels.InUnit(lengths)),
                BikeDrawing.sideView(rides, at),
                LimitTable.brief(rides, Left.of(Vocabulary.standard(), rides), contact.map(Wanted::from)));
    }

    /** With the shoe of whoever rides, and the contact points, by stock parts unless the bike is the one whose they are. */
    private Ride ride(Bike bike, Progress progress) {
        Ride ridden = seat.on(bike);
        return points().map(points -> ridden.on(fitted(seat.shod(bike), points, progress)))
                .orElse(ridden);
    }

    /** The wanted points, with the shoe, pedal and crank of whoever rides. */
    private Optional<Wanted> points() {
        return contact.map(points -> seat.rider().map(points::wornBy).orElse(points));
    }

    private <T> Stream<T> each(BiFunction<Bike, Progress, T> work, Progress progress) {
        return IntStream.range(0, bikes.size()).mapToObj(i -> work.apply(bikes.get(i), progress.part(i, bikes.size())));
    }

    private Bike fitted(Bike bike, Wanted points, Progress progress) {
        boolean owner = points.from().endsWith(" of " + bike.name());
        return stock.isPresent() && !owner
                ? new Match(bike, points, Geometry.of(bike), stock.get())
                        .best(1, progress)
                        .first()
                        .named()
                : points.on(bike);
    }

    /**
     * The best stock parts for each bike.
     *
     * @throws Refusal where contact points or parts are not chosen
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    List<Options> matched(Progress progress) {
        Wanted points = points().orElseThrow(
                        () -> new Refusal("Choose whose contact points are wanted; then parts are matched to them."));
        Stock parts = stock.orElseThrow(() -> new Refusal("Choose the stock parts that may be put on the bike."));
        return each((bike, part) -> matched(bike, points, parts, part), progress)
                .toList();
    }

    private Options matched(Bike bike, Wanted points, Stock parts, Progress progress) {
        Bike shod = seat.shod(bike);
        Matched matched = new Match(shod, points, Geometry.of(shod, seat.hands()), parts).best(OPTIONS, progress);
        return new Options(
                bike,
                MatchTable.brief(matched),
                matched.options().stream()
                        .map(option -> made(bike, shod, points, option))
                        .toList());
    }

    /** The bike with an option's parts and the points wanted, its shoe as it was: a rider's is not the bike's. */
    private static Bike made(Bike bike, Bike shod, Wanted points, Option option) {
        BikeDraft parts = BikeDraft.of(bike).changed(BikeDraft.of(shod), BikeDraft.of(option.named()));
        return points.on(parts.bike().orElseThrow());
    }
}
