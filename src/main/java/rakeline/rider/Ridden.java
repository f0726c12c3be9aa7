package rakeline.rider;

import java.util.List;
import java.util.Optional;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Hands;

/** A solved bicycle and, where there is one, the rider on it. This is what the measures of this package measure. */
public final class Ridden {
    private final Geometry geometry;
    private final Optional<Rider> rider;

    private Ridden(Geometry geometry, Optional<Rider> rider) {
        this.geometry = geometry;
        this.rider = rider;
    }

    /** A bicycle, the rider's shoe and contact points in place of its own. */
    public static Ridden of(Bike bike, Optional<Rider> rider, Hands hands) {
        Bike fitted = rider.map(who -> who.on(bike)).orElse(bike);
        return new Ridden(Geometry.of(fitted, hands), rider);
    }

    /** The same rider and hands on another bicycle, whose numbers are taken as they are. */
    public Ridden on(Bike bike) {
        return new Ridden(Geometry.of(bike, geometry.hands()), rider);
    }

    public Geometry geometry() {
        return geometry;
    }

    public Optional<Rider> rider() {
        return rider;
    }

    /** The rider's pieces, cranks level; empty without a rider or in a posture that cannot close. */
    public List<BodyPart> body() {
        return List.of();
    }
}
