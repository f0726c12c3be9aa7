package rakeline.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import rakeline.geometry.Bike;
import rakeline.geometry.Setting;
import rakeline.quantity.Numbers;
import rakeline.quantity.Range;
import rakeline.quantity.Refusal;

/**
 * Solves for the held measure at every step, walking outward from the bike as it is, so that of several solutions the
 * one continuous with the start is taken.
 */
final class HeldWalk {
    private static final double FIRST_STEP = 1e-3;

    /** Of the input's range: within this a root is taken to be the next one of the branch. */
    private static final double JUMP = 0.02;

    private static final int HALVINGS = 12;
    private static final int MOST_STRIDES = 200;

    private final Sweep sweep;
    private final Drawn drawn;
    private final Hold hold;
    private final double guess;
    private final BiConsumer<Integer, String> miss;

    /** The bike at a value of the swept input and one of the input that is solved for. */
    interface Drawn {
        /**
         * Draws it.
         *
         * @throws Refusal where no bike has them
         */
        Bike at(double value, double by);
    }

    /**
     * Where the walk stands.
     *
     * @param value of the swept input; NaN as long as no root was found
     * @param by of the input that is solved for
     */
    private record Spot(double value, double by) {
        boolean isOnBranch() {
            return !Double.isNaN(value);
        }
    }

    /**
     * A walk along a sweep.
     *
     * @param guess where the search for the first root begins
     * @param miss is told each step that cannot be reached, and why
     */
    HeldWalk(Sweep sweep, Drawn drawn, double guess, BiConsumer<Integer, String> miss) {
        this.sweep = sweep;
        this.hold = sweep.hold().orElseThrow();
        this.drawn = drawn;
        this.guess = guess;
        this.miss = miss;
    }

    /** A walk that begins at the bike as it is. */
    static HeldWalk of(Sweep sweep, BiConsumer<Integer, String> miss) {
        Setting by = sweep.hold().orElseThrow().by();
        Variation variation = sweep.variation().solvingFor(by);
        return new HeldWalk(sweep, variation::at, by.valueIn(sweep.bike()), miss);
    }

    /** The bike of each step; empty where none holds the measure. */
    List<Optional<Bike>> bikes() {
        return bikes(Progress.UNWATCHED);
    }

    /**
     * The bike of each step; empty where none holds the measure.
     *
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    List<Optional<Bike>> bikes(Progress progress) {
        Numbers steps = sweep.steps();
        List<Optional<Bike>> bikes = new ArrayList<>(Collections.nCopies(steps.size(), Optional.empty()));
        int first = nearestTo(sweep.here());
        Spot start = approach(steps.at(first));
        Spot at = start;
        for (int step = first; step < steps.size(); step++) {
            progress.check((double) (step - first) / steps.size());
            at = solve(step, at, bikes);
        }
        at = start;
        for (int step = first - 1; step >= 0; step--) {
            progress.check((double) (steps.size() - 1 - step) / steps.size());
            at = solve(step, at, bikes);
        }
        return bikes;
    }

    /** The bike that holds the measure at a value, near a number already solved for; empty where there is none near. */
    Optional<Bike> near(double value, double guess) {
        OptionalDouble root = root(value, guess);
        return root.isPresent() && isClose(guess, root.getAsDouble())
                ? Optional.of(drawn.at(value, root.getAsDouble()))
                : Optional.empty();
    }

    /** Walks from the bike as it is to the first step, in as many strides as a sweep's step would make. */
    private Spot approach(double first) {
        double here = sweep.here();
        Spot at = moved(new Spot(Double.NaN, guess), here);
        int strides = (int) Math.min(MOST_STRIDES, Math.ceil(Math.abs(first - here) / stride()));
        for (int i = 1; i <= strides; i++) {
            at = moved(at, here + i * (first - here) / strides);
        }
        return at;
    }

    private double stride() {
        Numbers steps = sweep.steps();
        return Math.abs(steps.at(steps.size() - 1) - steps.at(0)) / steps.size();
    }

    private Spot moved(Spot from, double value) {
        OptionalDouble root = follow(from, value, HALVINGS);
        return root.isPresent() ? new Spot(value, root.getAsDouble()) : from;
    }

    /**
     * The number that holds the measure at a value, on the branch of the spot: a jump must dwindle as the way is
     * halved, or the branch has ended.
     */
    private OptionalDouble follow(Spot from, double to, int halvings) {
        OptionalDouble root = root(to, from.by());
        if (root.isEmpty() || !from.isOnBranch() || isClose(from.by(), root.getAsDouble())) {
            return root;
        }
        if (halvings == 0) {
            return OptionalDouble.empty();
        }
        double middle = (from.value() + to) / 2;
        OptionalDouble half = follow(from, middle, halvings - 1);
        return half.isEmpty() ? half : follow(new Spot(middle, half.getAsDouble()), to, halvings - 1);
    }

    private boolean isClose(double by, double other) {
        return Math.abs(by - other) <= JUMP * span();
    }

    private double span() {
        Range range = hold.by().quantity().accepted();
        return range.to() - range.from();
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

    private Spot solve(int step, Spot from, List<Optional<Bike>> bikes) {
        double value = sweep.steps().at(step);
        OptionalDouble root = follow(from, value, HALVINGS);
        if (root.isEmpty()) {
            miss.accept(step, unreached());
            return from;
        }
        bikes.set(step, Optional.of(drawn.at(value, root.getAsDouble())));
        return new Spot(value, root.getAsDouble());
    }

    private OptionalDouble root(double value, double guess) {
        return new NearestRoot(by -> excess(value, by), hold.by().quantity().accepted(), Math.abs(hold.target()))
                .from(guess, FIRST_STEP * span());
    }

    private double excess(double value, double by) {
        try {
            Bike bike = drawn.at(value, by);
            return hold.measure().read(sweep.start().on(bike)).orNaN() - hold.target();
        } catch (Refusal e) {
            return Double.NaN;
        }
    }

    private String unreached() {
        return "no " + hold.by().quantity().inSentence() + " of "
                + hold.by().quantity().acceptedWords()
                + ", continuous with the start, brings "
                + hold.measure().quantity().inSentence() + " to "
                + hold.measure().quantity().said(hold.target()) + ".";
    }
}
