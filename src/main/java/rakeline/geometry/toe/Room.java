package rakeline.geometry.toe;

import java.util.Optional;

/** The least way forward over all steering and crank angles. */
final class Room {
    private Room() {}

    static Optional<Place> least(FrontWheel wheel, Toe toe) {
        SweptRing ring = SweptRing.of(wheel);
        Field field = new RoomField(toe);
        Spot spot = new LeastSearch(ring, field).over(0, wheel.steeringLimit());
        return spot.found() ? Optional.of(ring.place(spot, field)) : Optional.empty();
    }
}
