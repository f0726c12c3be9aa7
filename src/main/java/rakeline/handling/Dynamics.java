package rakeline.handling;

import rakeline.quantity.Lazy;

/**
 * A bicycle known by its 25 numbers alone.
 *
 * @param source where the numbers come from; may be empty
 */
public record Dynamics(String name, String source, BicycleParameters parameters, Lazy<Stability> solved) {
    public static Dynamics of(String name, String source, BicycleParameters parameters) {
        return new Dynamics(name, source, parameters, Lazy.of(() -> Stability.of(parameters)));
    }

    /** The numbers that follow from a bike and whoever is on it. */
    public static Dynamics of(Ride ride) {
        return new Dynamics(ride.bike().name(), "", ride.mount().parameters(), Lazy.of(ride::stability));
    }

    /** What it does hands off. */
    public Stability stability() {
        return solved.get();
    }

    @Override
    public String toString() {
        return name + " · " + stability();
    }
}
