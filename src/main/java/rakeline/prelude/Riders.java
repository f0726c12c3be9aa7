package rakeline.prelude;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rakeline.catalogue.Bundled;
import rakeline.catalogue.RiderFile;
import rakeline.figure.BikeDrawing;
import rakeline.figure.Drawing;
import rakeline.figure.MeasureTable;
import rakeline.figure.PostureTable;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.Hands;
import rakeline.handling.Ride;
import rakeline.quantity.Keyed;
import rakeline.quantity.Measure;
import rakeline.rider.CrankChange;
import rakeline.rider.Rider;
import rakeline.study.Vocabulary;

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

    /** A rider on a bike, hands on tops, hoods or drops. */
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

    /**
     * Starts a sweep of a bike and who rides it: {@code sweep(ride).over(CRANK_LENGTH, 160,
     * 175).track(HIP_ANGLE_AT_TOP).chart()}.
     */
    public static Sweeping sweep(Ride ride) {
        return Sweeping.of(ride);
    }

    /** Every measure of one ride, or of several side by side. */
    public static Table measures(Ride... rides) {
        return MeasureTable.of(Vocabulary.standard(), List.of(rides));
    }

    /** These measures, or inputs, of one ride or of several side by side. */
    public static Table measures(List<? extends Keyed> chosen, Ride... rides) {
        return MeasureTable.of(
                chosen.stream()
                        .map(keyed -> Vocabulary.standard().tracked(keyed.key()))
                        .toList(),
                List.of(rides));
    }

    /**
     * One measure or input of a bike and who rides it by key, in the unit that the key ends in; NaN where it has no
     * value.
     */
    public static double measure(Ride ride, String key) {
        return Vocabulary.standard().tracked(key).read(ride).orNaN();
    }

    /**
     * One measure of a bike and who rides it, in its unit: lengths in mm, angles in degrees; NaN where it has no
     * value.
     */
    public static double measure(Ride ride, Measure<?> measure) {
        return measure(ride, measure.key());
    }

    /** Side view to scale with the rider, of one ride or several laid over each other at BB. */
    public static Drawing draw(Ride... rides) {
        return BikeDrawing.sideView(List.of(rides));
    }

    private static Table cranks(Ride ride, boolean handsMove, double... crankMm) {
        return PostureTable.cranks(
                ride,
                Arrays.stream(crankMm)
                        .mapToObj(length -> new CrankChange(length, handsMove))
                        .toList());
    }
}
