package rakeline.study;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;

/** The bikes along one varied number; where a measure is held, those of the branch that the start lies on. */
final class Along {
    private final DoubleFunction<Optional<Bike>> bikes;

    private Along(DoubleFunction<Optional<Bike>> bikes) {
        this.bikes = bikes;
    }

    /** As drawn or refitted, nothing held. */
    static Along plain(Variation variation) {
        return new Along(value -> drawn(variation, value));
    }

    /**
     * With a measure held.
     *
     * @param places walked from the start outward, upward in order; between them the branch is followed from the
     *     nearest
     */
    static Along held(Ride start, Varied varied, Hold settled, Numbers places, Measure<Ride> track) {
        Sweep sweep = new Sweep(start, varied.setting(), places, varied.mode(), Optional.of(settled), List.of(track));
        HeldWalk walk = HeldWalk.of(sweep, (step, reason) -> {});
        List<Optional<Bike>> walked = walk.bikes();
        return new Along(value -> nearestPlace(places, walked, value)
                .flatMap(near -> walk.near(value, settled.by().valueIn(near))));
    }

    /** The bike at a value; empty where there is none. */
    Optional<Bike> at(double value) {
        return bikes.apply(value);
    }

    private static Optional<Bike> drawn(Variation variation, double value) {
        try {
            return Optional.of(variation.at(value));
        } catch (Refusal e) {
            // no bike has this number: a gap, as in a sweep
            return Optional.empty();
        }
    }

    private static Optional<Bike> nearestPlace(Numbers places, List<Optional<Bike>> walked, double value) {
        int nearest = -1;
        for (int i = 0; i < places.size(); i++) {
            boolean nearer = nearest < 0 || Math.abs(places.at(i) - value) < Math.abs(places.at(nearest) - value);
            if (walked.get(i).isPresent() && nearer) {
                nearest = i;
            }
        }
        return nearest < 0 ? Optional.empty() : walked.get(nearest);
    }
}
