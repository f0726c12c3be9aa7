package rakeline.handling;

import java.util.Optional;
import rakeline.geometry.Bike;
import rakeline.geometry.BikeOrRide;
import rakeline.geometry.Geometry;
import rakeline.geometry.Hands;
import rakeline.quantity.Input;
import rakeline.quantity.Lazy;
import rakeline.quantity.Reading;
import rakeline.rider.Ridden;
import rakeline.rider.Rider;

/**
 * A bicycle, where there is one its rider, and all that follows from both, each part solved when it is first asked
 * for. Every study asks a ride.
 */
public final class Ride implements BikeOrRide {
    private final Ridden ridden;

    private final Lazy<Reading> mass = Lazy.of(() -> Mount.massKg(ridden()));
    private final Lazy<Mount> mount = Lazy.of(this::weigh);
    private final Lazy<Stability> stability = Lazy.of(this::linearise);

    private Ride(Ridden ridden) {
        this.ridden = ridden;
    }

    /** A ride as it is; a bare bicycle without a rider, hands on the hoods. */
    public static Ride of(BikeOrRide either) {
        return either instanceof Ride ride ? ride : of(either.bike(), Hands.HOODS);
    }

    /** A bicycle without a rider. */
    public static Ride of(Bike bike, Hands hands) {
        return of(bike, Optional.empty(), hands);
    }

    /** A bicycle, the rider's shoe and contact points in place of its own. */
    public static Ride of(Bike bike, Optional<Rider> rider, Hands hands) {
        return new Ride(Ridden.of(bike, rider, hands));
    }

    /** The same rider and hands on another bicycle, whose numbers are taken as they are. */
    public Ride on(Bike bike) {
        return new Ride(ridden.on(bike));
    }

    /** As {@link #on}, for a bicycle that differs little: of foot and wheel, what is the same is not solved again. */
    public Ride beside(Bike bike) {
        return new Ride(ridden.beside(bike));
    }

    /** The same with the hands elsewhere on the bar. */
    public Ride with(Hands hands) {
        return new Ride(ridden.with(hands));
    }

    public Ridden ridden() {
        return ridden;
    }

    public Geometry geometry() {
        return ridden.geometry();
    }

    @Override
    public Bike bike() {
        return geometry().bike();
    }

    public String name() {
        return bike().name();
    }

    /** The same under another name. */
    public Ride named(String newName) {
        return on(bike().named(newName));
    }

    /** A number of the bicycle, the rider's shoe and contact points on it; NaN where it has none. */
    public double get(Input input) {
        return bike().get(input);
    }

    /**
     * A number of the bicycle by its key, or NaN.
     *
     * @throws rakeline.quantity.Refusal for an unknown key
     */
    public double get(String key) {
        return bike().get(key);
    }

    /** The same rider on the bicycle redrawn with one number changed, be it one of the rider's shoe. */
    public Ride with(Input input, double value) {
        return on(bike().with(input, value));
    }

    /** The same rider on the bicycle redrawn with one number changed; {@code wheels.both.…} changes both wheels. */
    public Ride with(String key, double value) {
        return on(bike().with(key, value));
    }

    /** Whether somebody rides it. */
    public boolean isRidden() {
        return ridden.rider().isPresent();
    }

    /** The 25 numbers of the linear bicycle, and what they rest on. */
    public Mount mount() {
        return mount.get();
    }

    /**
     * Mass of bicycle and rider, kg; where it cannot be said how it moves, why: a rider who cannot sit like this, or
     * moments of inertia that no body has.
     */
    public Reading massKg() {
        return mass.get();
    }

    /** What the bicycle with its rider does hands off. */
    public Stability stability() {
        return stability.get();
    }

    /** As in {@code Road S, ridden by Rider of 178 cm, hands on the hoods}. */
    @Override
    public String toString() {
        return bike().name()
                + ridden.rider().map(rider -> ", ridden by " + rider.name()).orElse(", without a rider")
                + ", hands on the "
                + geometry().hands().word();
    }

    private Mount weigh() {
        return Mount.of(ridden);
    }

    private Stability linearise() {
        return Stability.of(mount().parameters());
    }
}
