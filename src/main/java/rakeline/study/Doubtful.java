package rakeline.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.geometry.Bike;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/**
 * A bike as it would be if its numbers were off, also where that leaves the range of what is entered. Each is redrawn; a radius that is not given is off from the nominal
 * one of the bead seat and tyre drawn.
 */
record Doubtful(Bike base, List<Doubt> doubts) {
    /**
     * The bike with every doubt at so many standard uncertainties; empty where no bike has these numbers.
     *
     * @param deviations one for each doubt
     */
    Optional<Bike> at(double... deviations) {
        Map<Input, Double> others = new HashMap<>();
        Map<Input, Double> radii = new HashMap<>();
        for (int i = 0; i < deviations.length; i++) {
            for (Doubt.Part part : doubts.get(i).parts()) {
                double by = deviations[i] * part.uncertainty();
                (Doubt.isRadius(part.input()) ? radii : others).put(part.input(), by);
            }
        }
        try {
            return Optional.of(moved(moved(base, base, others), base, radii));
        } catch (Refusal e) {
            // no bike has these numbers: a draw without a value
            return Optional.empty();
        }
    }

    /** The bike with one doubt alone. */
    Optional<Bike> at(int doubt, double deviation) {
        double[] deviations = new double[doubts.size()];
        deviations[doubt] = deviation;
        return at(deviations);
    }

    private static Bike moved(Bike bike, Bike base, Map<Input, Double> by) {
        Map<Input, Double> changes = new HashMap<>();
        by.forEach((input, off) -> {
            double from = base.given().has(input) ? base.get(input) : bike.get(input);
            changes.put(input, from + off);
        });
        return changes.isEmpty() ? bike : bike.withSolved(changes);
    }
}
