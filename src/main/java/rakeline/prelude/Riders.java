package rakeline.prelude;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rakeline.catalogue.Bundled;
import rakeline.catalogue.RiderFile;
import rakeline.figure.PostureTable;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.Hands;
import rakeline.handling.Ride;
import rakeline.rider.CrankChange;
import rakeline.rider.Rider;

/** What a row may call about riders, and about the rides that they make of bikes. */
public final class Riders {
    private Riders() {}

    /** The rider of a file, looked for in the worksheet's folder, your Rakeline folder and among what is bundled. */
    public static Rider rider(String riderFile) {
        return RiderFile.read(Surroundings.current().roots().read(riderFile, RiderFile.SIZE_LIMIT), riderFile);
    }

    /** The riders to choose from, for {@code pick}: your own, then the bundled ones. */
    public static List<Listed<Rider>> riders() {
        return Listed.of(Surroundings.current().roots().paths(Bundled.RIDERS), Riders::rider, Rider::name);
    }

    /** A rider on a bike, hands on the hoods; the rider's shoe and contact points stand in place of the bike's. */
    public static Ride ride(Bike bike, Rider rider) {
        return Ride.of(bike, Optional.of(rider), Hands.HOODS);
    }

    /** A rider on a bike, hands on {@code "tops"}, {@code "hoods"} or {@code "drops"}. */
    public static Ride ride(Bike bike, Rider rider, String hands) {
        return Ride.of(bike, Optional.of(rider), Hands.of(hands));
    }

    /** Every measure of the rider, on one bike or on several side by side. */
    public static Table posture(Ride... rides) {
        return PostureTable.of(List.of(rides));
    }

    /** What the rider's file does not say, with the value taken in its place. */
    public static Table assumed(Rider rider) {
        return PostureTable.assumed(rider);
    }

    /**
     * Other cranks for the same leg, one row each; the hands stay where they are.
     *
     * @param crankMm crank lengths, mm, 60 to 220
     */
    public static Table cranks(Ride ride, double... crankMm) {
        return cranks(ride, false, crankMm);
    }

    /**
     * Other cranks for the same leg, one row each; the hands move with the saddle.
     *
     * @param crankMm crank lengths, mm, 60 to 220
     */
    public static Table cranksHandsMoving(Ride ride, double... crankMm) {
        return cranks(ride, true, crankMm);
    }

    private static Table cranks(Ride ride, boolean handsMove, double... crankMm) {
        return PostureTable.cranks(
                ride,
                Arrays.stream(crankMm)
                        .mapToObj(length -> new CrankChange(length, handsMove))
                        .toList());
    }
}
