package rakeline.prelude;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rakeline.catalogue.Bundled;
import rakeline.catalogue.PartsFile;
import rakeline.figure.ComparisonTable;
import rakeline.figure.LimitTable;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.Hands;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Ride;
import rakeline.study.Vocabulary;
import rakeline.study.fit.Comparison;
import rakeline.study.fit.Contender;
import rakeline.study.fit.Left;
import rakeline.study.fit.Wanted;

/** What a row may call by its bare name to fit bikes to a rider. */
public final class Fitting {
    private Fitting() {}

    /** The stock parts of a file, looked for where bikes are. */
    public static Stock parts(String partsFile) {
        return PartsFile.read(Surroundings.current().roots().read(partsFile, PartsFile.SIZE_LIMIT), partsFile);
    }

    /** The stock parts to choose from, for {@code pick}: your own, then the bundled ones. */
    public static List<Listed<Stock>> stocks() {
        return Listed.of(Surroundings.current().roots().paths(Bundled.PARTS), Fitting::parts, Stock::name);
    }

    /** Starts a match: {@code match(bike).to(other).with(parts).table()}. */
    public static Matching match(Bike bike) {
        return Matching.of(bike);
    }

    /** Bikes as built: every measure, and the differences against the first. */
    public static Table compare(Bike... bikes) {
        return compare(rides(bikes));
    }

    /** Bikes with the same rider on each, or with different ones: every measure, and the differences. */
    public static Table compare(Ride... rides) {
        return compared(Optional.empty(), rides);
    }

    /** Bikes with the contact points of one of them, or of another, on all. */
    public static Table compareAtContactOf(Bike whose, Bike... bikes) {
        return compareAtContactOf(whose, rides(bikes));
    }

    /** Bikes and their riders with the contact points of a bike on all. */
    public static Table compareAtContactOf(Bike whose, Ride... rides) {
        Wanted wanted = Wanted.of(whose);
        return compared(
                Optional.of(wanted.from()),
                Arrays.stream(rides)
                        .map(ride -> ride.on(wanted.on(ride.bike())))
                        .toArray(Ride[]::new));
    }

    /** What bikes have left to each limit. */
    public static Table limitsOf(Bike... bikes) {
        return limitsOf(rides(bikes));
    }

    /** What bikes and their riders have left to each limit. */
    public static Table limitsOf(Ride... rides) {
        return LimitTable.of(List.of(rides), Left.of(Vocabulary.standard(), List.of(rides)));
    }

    private static Ride[] rides(Bike... bikes) {
        return Arrays.stream(bikes).map(Ride::of).toArray(Ride[]::new);
    }

    private static Table compared(Optional<String> contact, Ride... rides) {
        List<Contender> contenders = IntStream.range(0, rides.length)
                .mapToObj(i -> new Contender(rides[i], i))
                .toList();
        return ComparisonTable.of(
                Comparison.of(Vocabulary.standard(), contenders, List.of(Hands.HOODS), contact, false, List.of()));
    }
}
