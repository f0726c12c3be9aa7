package rakeline.prelude;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rakeline.catalogue.Bundled;
import rakeline.catalogue.PartsFile;
import rakeline.figure.AdjustmentTable;
import rakeline.figure.ComparisonTable;
import rakeline.figure.LimitTable;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.BikeOrRide;
import rakeline.geometry.Hands;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Ride;
import rakeline.study.Vocabulary;
import rakeline.study.fit.Adjustment;
import rakeline.study.fit.Comparison;
import rakeline.study.fit.Contender;
import rakeline.study.fit.Left;
import rakeline.study.fit.Wanted;

/** What a row may call by its bare name to fit bikes to a rider. */
public final class Fitting {
    private Fitting() {}

    /**
     * The stock parts of a file, looked for in the worksheet's folder, your Rakeline folder and among what is
     * bundled.
     */
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

    /** Bikes as built, each with whoever rides it: every measure, and the differences against the first. */
    public static Table compare(BikeOrRide... bikes) {
        return compared(Optional.empty(), Asked.rides(bikes));
    }

    /**
     * Bikes, each with whoever rides it, with the contact points of one of them, or of another, on all: held from the
     * pedal, on that one's crank and in its shoe.
     */
    public static Table compareAtContactOf(BikeOrRide whose, BikeOrRide... bikes) {
        Wanted wanted = Wanted.of(whose.bike());
        return compared(
                Optional.of(wanted.from()),
                Asked.rides(bikes).stream().map(ride -> seated(wanted, ride)).toList());
    }

    /** A bike, with whoever rides it, with the contact points of another, held from the pedal: its crank and its shoe too. */
    public static Ride seatedAs(BikeOrRide whose, BikeOrRide bike) {
        return seated(Wanted.of(whose.bike()), Ride.of(bike));
    }

    private static Ride seated(Wanted wanted, Ride ride) {
        Wanted worn = ride.ridden().rider().map(wanted::wornBy).orElse(wanted);
        return ride.on(worn.on(ride.bike()));
    }

    /** What bikes, each with whoever rides it, have left to each limit. */
    public static Table limitsOf(BikeOrRide... bikes) {
        List<Ride> rides = Asked.rides(bikes);
        return LimitTable.of(rides, Left.of(Vocabulary.standard(), rides));
    }

    /** What spacers, stem, rails and post of bikes have left up, down, forward and back. */
    public static Table adjustmentsOf(BikeOrRide... bikes) {
        List<Ride> rides = Asked.rides(bikes);
        return AdjustmentTable.of(rides, Adjustment.of(rides, Optional.empty()));
    }

    private static Table compared(Optional<String> contact, List<Ride> rides) {
        List<Contender> contenders = IntStream.range(0, rides.size())
                .mapToObj(i -> new Contender(rides.get(i), i))
                .toList();
        return ComparisonTable.of(Comparison.of(
                Vocabulary.standard(), contenders, List.of(Hands.HOODS), contact, contact.isPresent(), List.of()));
    }
}
