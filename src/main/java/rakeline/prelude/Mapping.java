package rakeline.prelude;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rakeline.figure.MapFigure;
import rakeline.figure.MapFigures;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Refusal;
import rakeline.study.GridMap;
import rakeline.study.Hold;
import rakeline.study.Mapped;
import rakeline.study.Mode;
import rakeline.study.Steps;
import rakeline.study.Varied;
import rakeline.study.Vocabulary;

/**
 * A map being said, as in {@code map(it).over(HEAD_ANGLE, 69, 74).and(FORK_OFFSET, 40, 55).of(TOE_ROOM)}. Each word
 * returns a new one; {@code of} draws it.
 */
public final class Mapping {
    private final Ride ride;
    private final List<Function<Optional<Mode>, GridMap.Axis>> axes;
    private final Optional<Mode> mode;
    private final Optional<Hold> hold;

    private Mapping(
            Ride ride, List<Function<Optional<Mode>, GridMap.Axis>> axes, Optional<Mode> mode, Optional<Hold> hold) {
        this.ride = ride;
        this.axes = axes;
        this.mode = mode;
        this.hold = hold;
    }

    static Mapping of(Ride ride) {
        return new Mapping(ride, List.of(), Optional.empty(), Optional.empty());
    }

    /**
     * Varies an input over 61 values, ends included, to the right; the second one upward.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     */
    public Mapping over(String inputKey, double from, double to) {
        return axis(inputKey, varied -> GridMap.Axis.of(varied, from, to));
    }

    /**
     * Varies an input over values a step apart, ends included, to the right; the second one upward.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     * @param step from value to value, above 0; at most 100,000 values
     */
    public Mapping over(String inputKey, double from, double to, double step) {
        return axis(inputKey, varied -> new GridMap.Axis(varied, Steps.of(from, to, step)));
    }

    /**
     * Varies an input over 61 values, ends included, to the right; the second one upward.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     */
    public Mapping over(Input input, double from, double to) {
        return over(input.key(), from, to);
    }

    /**
     * Varies an input over values a step apart, ends included, to the right; the second one upward.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     * @param step from value to value, above 0; at most 100,000 values
     */
    public Mapping over(Input input, double from, double to, double step) {
        return over(input.key(), from, to, step);
    }

    /**
     * The second input, upward, over 61 values, ends included.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     */
    public Mapping and(String inputKey, double from, double to) {
        return over(inputKey, from, to);
    }

    /**
     * The second input, upward, with a step.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     * @param step from value to value, above 0; at most 100,000 values
     */
    public Mapping and(String inputKey, double from, double to, double step) {
        return over(inputKey, from, to, step);
    }

    /**
     * The second input, upward, over 61 values, ends included.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     */
    public Mapping and(Input input, double from, double to) {
        return over(input.key(), from, to);
    }

    /**
     * The second input, upward, with a step.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     * @param step from value to value, above 0; at most 100,000 values
     */
    public Mapping and(Input input, double from, double to, double step) {
        return over(input.key(), from, to, step);
    }

    /** Holds a measure at its starting value, by solving for the input that {@code by} then names. */
    public Holding<Mapping> hold(String measureKey) {
        return hold(measureKey, Double.NaN);
    }

    /**
     * Holds a measure at a value, by solving for the input that {@code by} then names.
     *
     * @param value the value to hold, in the measure's unit
     */
    public Holding<Mapping> hold(String measureKey, double value) {
        return new Holding<>(
                held -> new Mapping(ride, axes, mode, Optional.of(held)),
                Vocabulary.standard().measure(measureKey),
                value);
    }

    /** Holds a measure at its starting value, by solving for the input that {@code by} then names. */
    public Holding<Mapping> hold(Measure<?> measure) {
        return hold(measure.key());
    }

    /**
     * Holds a measure at a value, by solving for the input that {@code by} then names.
     *
     * @param value the value to hold, in the measure's unit
     */
    public Holding<Mapping> hold(Measure<?> measure, double value) {
        return hold(measure.key(), value);
    }

    /**
     * Refits at each value: the frame stays one rigid body and turns about the ground until both tyres touch. Usual
     * for wheels, fork length and sag.
     */
    public Mapping asRefit() {
        return new Mapping(ride, axes, Optional.of(Mode.REFIT), hold);
    }

    /**
     * Redraws at each value: the number as drawn, everything else as printed. Usual for all but wheels, fork length
     * and sag.
     */
    public Mapping asRedraw() {
        return new Mapping(ride, axes, Optional.of(Mode.REDRAW), hold);
    }

    /** Draws the map of a measure, or of an input, its values as colours and contours over both inputs. */
    public MapFigure of(String key) {
        return MapFigures.of(run(key));
    }

    /** Draws the map of a measure, its values as colours and contours over both inputs. */
    public MapFigure of(Measure<?> measure) {
        return of(measure.key());
    }

    /** The map of a measure, or of an input, as numbers, NaN where a place has no value. */
    public Mapped run(String key) {
        if (axes.size() != 2) {
            throw new Refusal("the map varies " + axes.size()
                    + " inputs; accepted are two: .over(key, from, to).and(key, from, to).");
        }
        Measure<Ride> track = Vocabulary.standard().tracked(key);
        return new GridMap(ride, axes.get(0).apply(mode), axes.get(1).apply(mode), track, hold).run();
    }

    @Override
    public String toString() {
        return "A map of " + ride.bike().name() + "; .of(measure) draws it.";
    }

    private Mapping axis(String key, Function<Varied, GridMap.Axis> axis) {
        return new Mapping(ride, Asked.with(axes, List.of(way -> axis.apply(Asked.varied(key, way)))), mode, hold);
    }
}
