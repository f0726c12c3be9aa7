package rakeline.prelude;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rakeline.figure.Chart;
import rakeline.figure.SweepChart;
import rakeline.figure.Table;
import rakeline.geometry.BikeOrRide;
import rakeline.geometry.Hands;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Keyed;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;
import rakeline.study.Hold;
import rakeline.study.Mode;
import rakeline.study.Relative;
import rakeline.study.Steps;
import rakeline.study.Sweep;
import rakeline.study.Swept;
import rakeline.study.Vocabulary;

/**
 * A sweep being said, as in {@code sweep(it).over(HEAD_ANGLE, 69, 74).track(TRAIL).chart()}. Each word returns a new
 * one.
 */
public final class Sweeping {
    private final Ride ride;
    private final Optional<Setting> vary;
    private final Numbers steps;
    private final Optional<Mode> mode;
    private final Optional<Hold> hold;
    private final List<Measure<Ride>> tracks;
    private final boolean uncertain;

    private Sweeping(
            Ride ride,
            Optional<Setting> vary,
            Numbers steps,
            Optional<Mode> mode,
            Optional<Hold> hold,
            List<Measure<Ride>> tracks,
            boolean uncertain) {
        this.ride = ride;
        this.vary = vary;
        this.steps = steps;
        this.mode = mode;
        this.hold = hold;
        this.tracks = tracks;
        this.uncertain = uncertain;
    }

    static Sweeping of(Ride ride) {
        return new Sweeping(
                ride, Optional.empty(), Numbers.none(), Optional.empty(), Optional.empty(), List.of(), false);
    }

    /**
     * Sweeps an input over 201 values, ends included.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     */
    public Sweeping over(String inputKey, double from, double to) {
        return over(Setting.of(inputKey), Steps.of(from, to));
    }

    /**
     * Sweeps an input over values a step apart, ends included.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     * @param step from value to value, above 0; at most 100,000 values
     */
    public Sweeping over(String inputKey, double from, double to, double step) {
        return over(Setting.of(inputKey), Steps.of(from, to, step));
    }

    /**
     * Sweeps an input over 201 values, ends included.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     */
    public Sweeping over(Input input, double from, double to) {
        return over(Setting.of(input), Steps.of(from, to));
    }

    /**
     * Sweeps an input over values a step apart, ends included.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     * @param step from value to value, above 0; at most 100,000 values
     */
    public Sweeping over(Input input, double from, double to, double step) {
        return over(Setting.of(input), Steps.of(from, to, step));
    }

    /** Holds a measure at its starting value; {@link Holding#by} says what is solved for. */
    public Holding<Sweeping> hold(String measureKey) {
        return hold(measureKey, Double.NaN);
    }

    /**
     * Holds a measure at a value; {@link Holding#by} says what is solved for.
     *
     * @param value the value to hold, in the measure's unit
     */
    public Holding<Sweeping> hold(String measureKey, double value) {
        return new Holding<>(this::holding, Vocabulary.standard().measure(measureKey), value);
    }

    /** Holds a measure at its starting value; {@link Holding#by} says what is solved for. */
    public Holding<Sweeping> hold(Measure<?> measure) {
        return hold(measure.key());
    }

    /**
     * Holds a measure at a value; {@link Holding#by} says what is solved for.
     *
     * @param value the value to hold, in the measure's unit
     */
    public Holding<Sweeping> hold(Measure<?> measure, double value) {
        return hold(measure.key(), value);
    }

    /** Tracks measures, or inputs, by key: a curve and a column each. */
    public Sweeping track(String... keys) {
        return tracking(Arrays.stream(keys).map(Vocabulary.standard()::tracked).toList());
    }

    /** Tracks measures, or inputs, by constant: a curve and a column each. */
    public Sweeping track(Keyed... declared) {
        return track(Arrays.stream(declared).map(Keyed::key).toArray(String[]::new));
    }

    /**
     * Refits at each value: the frame stays one rigid body and turns about the ground until both tyres touch. Usual
     * for wheels, fork length and sag.
     */
    public Sweeping asRefit() {
        return with(Mode.REFIT);
    }

    /**
     * Redraws at each value: the number as drawn, everything else as printed. Usual for all but wheels, fork length
     * and sag.
     */
    public Sweeping asRedraw() {
        return with(Mode.REDRAW);
    }

    /** Measures with the hands on {@code "tops"}, {@code "hoods"} or {@code "drops"}; hoods where nothing is said. */
    public Sweeping hands(String hands) {
        return new Sweeping(ride.with(Hands.of(hands)), vary, steps, mode, hold, tracks, uncertain);
    }

    /** What is tracked so far is given as its change against a present bike, under whoever rides it, in per cent. */
    public Sweeping inPercentOf(BikeOrRide present) {
        Ride now = present instanceof Ride other ? other : ride.on(present.bike());
        List<Measure<Ride>> changes =
                tracks.stream().map(measure -> Relative.to(now, measure)).toList();
        return new Sweeping(ride, vary, steps, mode, hold, changes, uncertain);
    }

    /** Carries the uncertainties of the inputs along: a band about each curve, a column more for each measure. */
    public Sweeping withUncertainty() {
        return new Sweeping(ride, vary, steps, mode, hold, tracks, true);
    }

    /** The result as a chart, one curve a measure, with gaps where a step has no solution. */
    public Chart chart() {
        return SweepChart.of(run());
    }

    /** The result as a table, one line a step, the input first. */
    public Table table() {
        return chart().table();
    }

    /** The result as numbers: the values of the input, and for each measure one value a step, NaN in a gap. */
    public Swept run() {
        Setting swept =
                vary.orElseThrow(() -> new Refusal("the sweep does not say over what; add .over(key, from, to)."));
        Sweep sweep = new Sweep(ride, swept, steps, mode.orElseGet(() -> Mode.usualFor(swept)), hold, tracks);
        return uncertain ? sweep.runWithUncertainty() : sweep.run();
    }

    private Sweeping over(Setting setting, Numbers values) {
        return new Sweeping(ride, Optional.of(setting), values, mode, hold, tracks, uncertain);
    }

    private Sweeping with(Mode newMode) {
        return new Sweeping(ride, vary, steps, Optional.of(newMode), hold, tracks, uncertain);
    }

    private Sweeping tracking(List<Measure<Ride>> more) {
        List<Measure<Ride>> all = new ArrayList<>(tracks);
        all.addAll(more);
        return new Sweeping(ride, vary, steps, mode, hold, List.copyOf(all), uncertain);
    }

    private Sweeping holding(Hold newHold) {
        return new Sweeping(ride, vary, steps, mode, Optional.of(newHold), tracks, uncertain);
    }
}
