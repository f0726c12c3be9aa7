package rakeline.prelude;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
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
    public static Stock parts(String path) {
        return PartsFile.read(Surroundings.current().roots().read(path, PartsFile.SIZE_LIMIT), path);
    }

    /** Starts a match: {@code match(bike).to(other).with(parts).table()}. */
    public static Matching match(Bike bike) {
        return Matching.of(bike);
    }

    /** Bikes as built: every measure, and the differences against the first. */
    public static Table compare(Bike... bikes) {
        return compared(contenders(bikes), Optional.empty());
    }

    /** Bikes with the contact points of one of them, or of another, on all. */
    public static Table compareAtContactOf(Bike whose, Bike... bikes) {
        Wanted wanted = Wanted.of(whose);
        Bike[] placed = Arrays.stream(bikes).map(wanted::on).toArray(Bike[]::new);
        return compared(contenders(placed), Optional.of(wanted.from()));
    }

    /** What bikes have left to each limit. */
    public static Table limitsOf(Bike... bikes) {
        List<Ride> rides = Arrays.stream(bikes).map(Ride::of).toList();
        return LimitTable.of(rides, Left.of(Vocabulary.standard(), rides));
    }

    private static List<Contender> contenders(Bike... bikes) {
        return IntStream.range(0, bikes.length)
                .mapToObj(i -> new Contender(Ride.of(bikes[i]), i))
                .toList();
    }

    private static Table compared(List<Contender> contenders, Optional<String> contact) {
        return ComparisonTable.of(
                Comparison.of(Vocabulary.standard(), contenders, List.of(Hands.HOODS), contact, false, List.of()));
    }
}
