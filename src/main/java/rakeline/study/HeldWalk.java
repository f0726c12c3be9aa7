package rakeline.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import rakeline.geometry.Bike;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Range;
import rakeline.quantity.Refusal;

/**
 * Solves for the held measure at every step, walking outward from the bike as it is, so that of several solutions the
 * one continuous with the start is taken.
 */
final class HeldWalk {
    private static final double TOLERANCE = 1e-10;
    private static final double FIRST_STEP = 1e-3;

    private final Sweep sweep;
    private final Variation variation;
    private final Hold hold;
    private final BiConsumer<Integer, String> miss;

    HeldWalk(Sweep sweep, Variation variation, BiConsumer<Integer, String> miss) {
        this.sweep = sweep;
        this.variation = variation;
        this.hold = sweep.hold().orElseThrow();
        this.miss = miss;
    }

    /** The bike of each step; empty where none holds the measure. */
    List<Optional<Bike>> bikes() {
        Numbers steps = sweep.steps();
        List<Optional<Bike>> bikes = new ArrayList<>(Collections.nCopies(steps.size(), Optional.empty()));
        int start = nearestTo(sweep.here());
        double atStart = approach(steps.at(start));
        double guess = atStart;
        for (int step = start; step < steps.size(); step++) {
            guess = solve(step, guess, bikes);
        }
        guess = atStart;
        for (int step = start - 1; step >= 0; step--) {
            guess = solve(step, guess, bikes);
        }
        return bikes;
    }

    /** Walks from the bike as it is to the first step, in as many strides as a sweep's step would make. */
    private double approach(double first) {
        double from = sweep.here();
        double guess = hold.by().valueIn(sweep.bike());
        double stride = Math.abs(sweep.steps().at(1) - sweep.steps().at(0));
        int strides = (int) Math.min(200, Math.ceil(Math.abs(first - from) / stride));
        for (int i = 0; i < strides; i++) {
            guess = root(from + i * (first - from) / strides, guess).orElse(guess);
        }
        return guess;
    }

    private int nearestTo(double value) {
        Numbers steps = sweep.steps();
        int nearest = 0;
        for (int i = 1; i < steps.size(); i++) {
            if (Math.abs(steps.at(i) - value) < Math.abs(steps.at(nearest) - value)) {
                nearest = i;
            }
        }
        return nearest;
    }

    private double solve(int step, double guess, List<Optional<Bike>> bikes) {
        double value = sweep.steps().at(step);
        OptionalDouble root = root(value, guess);
        if (root.isEmpty()) {
            miss.accept(step, unreached());
            return guess;
        }
        bikes.set(step, Optional.of(variation.at(value, hold.by(), root.getAsDouble())));
        return root.getAsDouble();
    }

    private OptionalDouble root(double value, double guess) {
        Range range = hold.by().quantity().accepted();
        return new NearestRoot(by -> excess(value, by), range, TOLERANCE)
                .from(guess, FIRST_STEP * (range.to() - range.from()));
    }

    private double excess(double value, double by) {
        try {
            Bike bike = variation.at(value, hold.by(), by);
            return hold.measure().read(sweep.geometry(bike)).orNaN() - hold.target();
        } catch (Refusal e) {
            return Double.NaN;
        }
    }

    private String unreached() {
        return "no " + hold.by().key() + " within " + hold.by().quantity().accepted() + " brings "
                + hold.measure().key() + " to " + Decimals.shortest(hold.target()) + ".";
    }
}
