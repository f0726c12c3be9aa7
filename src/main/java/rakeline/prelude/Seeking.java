package rakeline.prelude;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rakeline.figure.StudyTables;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Refusal;
import rakeline.study.Hold;
import rakeline.study.Mode;
import rakeline.study.Seek;
import rakeline.study.Sought;
import rakeline.study.Span;
import rakeline.study.Target;
import rakeline.study.Vocabulary;

/**
 * A search being said, as in {@code seek(it).over(HEAD_ANGLE, 66, 76).where(TRAIL, 58).table()}. Each word returns a
 * new one.
 */
public final class Seeking {
    private final Ride ride;
    private final Optional<Function<Optional<Mode>, Span>> over;
    private final Optional<Target> target;
    private final Optional<Hold> hold;
    private final Optional<Mode> mode;

    private Seeking(
            Ride ride,
            Optional<Function<Optional<Mode>, Span>> over,
            Optional<Target> target,
            Optional<Hold> hold,
            Optional<Mode> mode) {
        this.ride = ride;
        this.over = over;
        this.target = target;
        this.hold = hold;
        this.mode = mode;
    }

    static Seeking of(Ride ride) {
        return new Seeking(ride, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Looks through a range of an input, ends included.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     */
    public Seeking over(String inputKey, double from, double to) {
        Function<Optional<Mode>, Span> span = way -> new Span(Asked.varied(inputKey, way), from, to);
        return new Seeking(ride, Optional.of(span), target, hold, mode);
    }

    /**
     * Looks through a range of an input, ends included.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     */
    public Seeking over(Input input, double from, double to) {
        return over(input.key(), from, to);
    }

    /**
     * For every value at which a measure, or an input, has this value.
     *
     * @param value the value that is wanted, in its unit
     */
    public Seeking where(String key, double value) {
        Target wanted = new Target(Vocabulary.standard().tracked(key), value);
        return new Seeking(ride, over, Optional.of(wanted), hold, mode);
    }

    /**
     * For every value at which a measure has this value.
     *
     * @param value the value that is wanted, in its unit
     */
    public Seeking where(Measure<?> measure, double value) {
        return where(measure.key(), value);
    }

    /** Holds a measure at its starting value; {@link Holding#by} says what is solved for. */
    public Holding<Seeking> hold(String measureKey) {
        return hold(measureKey, Double.NaN);
    }

    /**
     * Holds a measure at a value; {@link Holding#by} says what is solved for.
     *
     * @param value the value to hold, in the measure's unit
     */
    public Holding<Seeking> hold(String measureKey, double value) {
        return new Holding<>(this::holding, Vocabulary.standard().measure(measureKey), value);
    }

    /** Holds a measure at its starting value; {@link Holding#by} says what is solved for. */
    public Holding<Seeking> hold(Measure<?> measure) {
        return hold(measure.key());
    }

    /**
     * Holds a measure at a value; {@link Holding#by} says what is solved for.
     *
     * @param value the value to hold, in the measure's unit
     */
    public Holding<Seeking> hold(Measure<?> measure, double value) {
        return hold(measure.key(), value);
    }

    /**
     * Refits at each value: the frame stays one rigid body and turns about the ground until both tyres touch. Usual
     * for wheels, fork length and sag.
     */
    public Seeking asRefit() {
        return new Seeking(ride, over, target, hold, Optional.of(Mode.REFIT));
    }

    /**
     * Redraws at each value: the number as drawn, everything else as printed. Usual for all but wheels, fork length
     * and sag.
     */
    public Seeking asRedraw() {
        return new Seeking(ride, over, target, hold, Optional.of(Mode.REDRAW));
    }

    /** Every solution as a table, upward, or the nearest place where there is none. */
    public Table table() {
        return StudyTables.of(run());
    }

    /** The values of the input at the solutions, upward, in its unit; empty where there is none. */
    public List<Double> values() {
        return run().values().stream().boxed().toList();
    }

    /** The bikes of the solutions, in the order of their values; empty where there is none. */
    public List<Bike> bikes() {
        return run().solutions().stream().map(Sought.Solution::bike).toList();
    }

    /** The result as values, to go on with in Java. */
    public Sought run() {
        Span span = over.orElseThrow(() -> new Refusal("the search does not say over what; add .over(key, from, to)."))
                .apply(mode);
        Target wanted =
                target.orElseThrow(() -> new Refusal("the search does not say what for; add .where(measure, value)."));
        return new Seek(ride, span, wanted, hold).run();
    }

    @Override
    public String toString() {
        return "A search on " + ride.bike().name() + "; .table() or .values() runs it.";
    }

    private Seeking holding(Hold newHold) {
        return new Seeking(ride, over, target, Optional.of(newHold), mode);
    }
}
