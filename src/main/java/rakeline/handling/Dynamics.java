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

    /** What it does hands off. */
    public Stability stability() {
        return solved.get();
    }

    @Override
    public String toString() {
        return name + " · " + stability();
    }
}
