package rakeline.prelude;

import java.util.List;
import rakeline.geometry.Bike;
import rakeline.geometry.BikeOrRide;
import rakeline.handling.Ride;

/** The studies that a row may start by their bare names, each of a bike or of a bike and who rides it. */
public final class Studies {
    private Studies() {}

    /** Starts a map: {@code map(it).over(HEAD_ANGLE, 69, 74).and(FORK_OFFSET, 40, 55).of(TOE_ROOM)}. */
    public static Mapping map(BikeOrRide bike) {
        return Mapping.of(Ride.of(bike));
    }

    /** Starts a search: {@code seek(it).over(HEAD_ANGLE, 66, 76).where(TRAIL, 58).table()}. */
    public static Seeking seek(BikeOrRide bike) {
        return Seeking.of(Ride.of(bike));
    }

    /**
     * Starts solving for several numbers at once: {@code solve(it).by(HEAD_ANGLE).by(FORK_OFFSET).where(TRAIL,
     * 58).where(TOE_ROOM, 0).table()}.
     */
    public static Solving solve(BikeOrRide bike) {
        return Solving.of(Ride.of(bike));
    }

    /** Starts a sensitivity: {@code sensitivity(it).by(HEAD_ANGLE).of(TRAIL, FRONT_CENTRE).table()}. */
    public static Sensing sensitivity(BikeOrRide bike) {
        return Sensing.of(Ride.of(bike));
    }

    /** Starts a spread of uncertainties: {@code spread(it).of(TRAIL, TOE_ROOM).table()}. */
    public static Spreading spread(BikeOrRide bike) {
        return Spreading.of(Ride.of(bike));
    }

    /** Starts a size run: {@code sizes(xxs, xs, s, m).floor(FRONT_CENTRE, 575).hold(TRAIL, 58).table()}. */
    public static Sizing sizes(BikeOrRide... bikes) {
        return Sizing.of(Asked.rides(bikes));
    }

    /** Starts a size run of listed bikes, as in {@code sizes(bikes())}. */
    public static Sizing sizes(List<Listed<Bike>> bikes) {
        return Sizing.of(bikes.stream().map(listed -> Ride.of(listed.item())).toList());
    }
}
