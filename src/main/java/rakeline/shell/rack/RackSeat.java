package rakeline.shell.rack;

import java.util.Optional;
import rakeline.geometry.Bike;
import rakeline.geometry.Hands;
import rakeline.handling.Ride;
import rakeline.rider.Rider;

/** Who sits on every bike of the rack, if anyone, and where the hands are. */
record RackSeat(Optional<Rider> rider, Hands hands) {
    static final RackSeat EMPTY = new RackSeat(Optional.empty(), Hands.HOODS);

    Ride on(Bike bike) {
        return Ride.of(bike, rider, hands);
    }
}
