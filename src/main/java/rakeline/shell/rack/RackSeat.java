package rakeline.shell.rack;

import java.util.Optional;
import rakeline.geometry.Bike;
import rakeline.geometry.Hands;
import rakeline.handling.Ride;
import rakeline.rider.Rider;

/** Who sits on every bike of the rack, if anyone, and where the hands are. */
record RackSeat(Optional<Rider> rider, Hands hands) {
    static final RackSeat EMPTY = new RackSeat(Optional.empty(), Hands.HOODS);

    /** A bike with whoever sits on it: every number of the rack that follows from a bike is read from this. */
    Ride on(Bike bike) {
        return Ride.of(bike, rider, hands);
    }

    /** A bike with the shoe and the contact points of whoever sits on it. */
    Bike shod(Bike bike) {
        return rider.map(one -> one.on(bike)).orElse(bike);
    }

    /** Whose shoe is on the bikes, in words. */
    String shoe() {
        return rider.filter(one -> one.own().keySet().stream()
                        .anyMatch(input -> input.group().equals("shoe")))
                .map(one -> "shoe of " + one.name())
                .orElse("each bike's own shoe");
    }
}
