package rakeline.prelude;

import java.util.List;
import java.util.Optional;
import rakeline.catalogue.ExampleBike;
import rakeline.figure.BikeDrawing;
import rakeline.figure.Drawing;
import rakeline.figure.Figure;
import rakeline.figure.KeyDrawings;
import rakeline.geometry.BikeOrRide;
import rakeline.handling.Ride;
import rakeline.quantity.Lazy;

/** Drawings beside words: those for a value that a row ends in, and those of what a key means. */
public final class Pictures {
    private static final Lazy<KeyDrawings> KEYS = Lazy.of(() -> KeyDrawings.of(example()));

    private Pictures() {}

    /** What drawings explain keys with: the bundled bike that has every part. */
    public static Ride example() {
        return Ride.of(ExampleBike.read());
    }

    /** The drawing that shows what a key means; empty where no dimension of a drawing is that. */
    public static Optional<Figure> ofKey(String key) {
        return KEYS.get().find(key);
    }

    /** Side view and, with cranks, the plan view of a bike and whoever rides it; none for anything else. */
    public static List<Drawing> of(Object value) {
        if (!(value instanceof BikeOrRide either)) {
            return List.of();
        }
        Ride ride = Ride.of(either);
        Drawing side = BikeDrawing.sideView(List.of(ride));
        return ride.bike().hasGroup("crank") ? List.of(side, BikeDrawing.planView(ride)) : List.of(side);
    }
}
