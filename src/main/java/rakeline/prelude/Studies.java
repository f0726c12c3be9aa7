package rakeline.prelude;

import java.util.Arrays;
import java.util.List;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;

/** The studies that a row may start by their bare names, beside {@link Prelude#sweep}. */
public final class Studies {
    private Studies() {}

    /** Starts a map: {@code map(it).over(HEAD_ANGLE, 69, 74).and(FORK_OFFSET, 40, 55).of(TOE_ROOM)}. */
    public static Mapping map(Bike bike) {
        return map(Ride.of(bike));
    }

    /** Starts a map of a bike and who rides it. */
    public static Mapping map(Ride ride) {
        return Mapping.of(ride);
    }

    /** Starts a search: {@code seek(it).over(HEAD_ANGLE, 66, 76).where(TRAIL, 58).table()}. */
    public static Seeking seek(Bike bike) {
        return seek(Ride.of(bike));
    }

    /** Starts a search on a bike and who rides it. */
    public static Seeking seek(Ride ride) {
        return Seeking.of(ride);
    }

    /**
     * Starts solving for several numbers at once: {@code solve(it).by(HEAD_ANGLE).by(FORK_OFFSET).where(TRAIL,
     * 58).where(TOE_ROOM, 0).table()}.
     */
    public static Solving solve(Bike bike) {
        return solve(Ride.of(bike));
    }

    /** Starts solving for several numbers of a bike and who rides it. */
    public static Solving solve(Ride ride) {
        return Solving.of(ride);
    }

    /** Starts a sensitivity: {@code sensitivity(it).by(HEAD_ANGLE).of(TRAIL, FRONT_CENTRE).table()}. */
    public static Sensing sensitivity(Bike bike) {
        return sensitivity(Ride.of(bike));
    }

    /** Starts a sensitivity of a bike and who rides it. */
    public static Sensing sensitivity(Ride ride) {
        return Sensing.of(ride);
    }

    /** Starts a spread of uncertainties: {@code spread(it).of(TRAIL, TOE_ROOM).table()}. */
    public static Spreading spread(Bike bike) {
        return spread(Ride.of(bike));
    }

    /** Starts a spread of the uncertainties of a bike and who rides it. */
    public static Spreading spread(Ride ride) {
        return Spreading.of(ride);
    }

    /** Starts a size run: {@code sizes(xxs, xs, s, m).floor(FRONT_CENTRE, 575).hold(TRAIL, 58).table()}. */
    public static Sizing sizes(Bike... bikes) {
        return Sizing.of(Arrays.stream(bikes).map(Ride::of).toList());
    }

    /** Starts a size run of bikes with who rides each. */
    public static Sizing sizes(Ride... rides) {
        return Sizing.of(List.of(rides));
    }

    /** Starts a size run of listed bikes, as in {@code sizes(bikes())}. */
    public static Sizing sizes(List<Listed<Bike>> bikes) {
        return Sizing.of(bikes.stream().map(listed -> Ride.of(listed.item())).toList());
    }
}
