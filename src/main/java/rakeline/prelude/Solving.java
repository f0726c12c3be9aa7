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
import rakeline.study.Mode;
import rakeline.study.Solve;
import rakeline.study.Solved;
import rakeline.study.Span;
import rakeline.study.Target;
import rakeline.study.Vocabulary;

/**
 * Several numbers being solved for at once, as in {@code
 * solve(it).by(HEAD_ANGLE).by(FORK_OFFSET).where(TRAIL, 58).where(TOE_ROOM, 0).table()}. Each word returns a new one.
 */
public final class Solving {
    private final Ride ride;
    private final List<Function<Optional<Mode>, Span>> spans;
    private final List<Target> targets;
    private final Optional<Mode> mode;

    private Solving(Ride ride, List<Function<Optional<Mode>, Span>> spans, List<Target> targets, Optional<Mode> mode) {
        this.ride = ride;
        this.spans = spans;
        this.targets = targets;
        this.mode = mode;
    }

    static Solving of(Ride ride) {
        return new Solving(ride, List.of(), List.of(), Optional.empty());
    }

    /** Solves for an input, anywhere within what it accepts. */
    public Solving by(String inputKey) {
        return spanning(way -> Span.of(Asked.varied(inputKey, way)));
    }

    /**
     * Solves for an input within a range.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     */
    public Solving by(String inputKey, double from, double to) {
        return spanning(way -> new Span(Asked.varied(inputKey, way), from, to));
    }

    /** Solves for an input, anywhere within what it accepts. */
    public Solving by(Input input) {
        return by(input.key());
    }

    /**
     * Solves for an input within a range.
     *
     * @param from the first value, in the input's unit, within what it accepts
     * @param to the last value, in the input's unit, within what it accepts
     */
    public Solving by(Input input, double from, double to) {
        return by(input.key(), from, to);
    }

    /**
     * So that a measure, or an input, has this value.
     *
     * @param value the value that is wanted, in its unit
     */
    public Solving where(String key, double value) {
        Target target = new Target(Vocabulary.standard().tracked(key), value);
        return new Solving(ride, spans, Asked.with(targets, List.of(target)), mode);
    }

    /**
     * So that a measure has this value.
     *
     * @param value the value that is wanted, in its unit
     */
    public Solving where(Measure<?> measure, double value) {
        return where(measure.key(), value);
    }

    /**
     * Refits at each value: the frame stays one rigid body and turns about the ground until both tyres touch. Usual
     * for wheels, fork length and sag.
     */
    public Solving asRefit() {
        return new Solving(ride, spans, targets, Optional.of(Mode.REFIT));
    }

    /**
     * Redraws at each value: the number as drawn, everything else as printed. Usual for all but wheels, fork length
     * and sag.
     */
    public Solving asRedraw() {
        return new Solving(ride, spans, targets, Optional.of(Mode.REDRAW));
    }

    /** The solutions, or where there is none the nearest place. */
    public Table table() {
        return StudyTables.of(run());
    }

    /**
     * The bike of the first solution.
     *
     * @throws Refusal where there is none, saying by how much each target is missed at the nearest
     */
    public Bike bike() {
        Solved solved = run();
        return solved.bike().orElseThrow(() -> new Refusal(solved.sentence()));
    }

    /** The result as values, to go on with in Java. */
    public Solved run() {
        return new Solve(ride, spans.stream().map(span -> span.apply(mode)).toList(), targets).run();
    }

    @Override
    public String toString() {
        return "Numbers of " + ride.bike().name() + " to be solved for; .table() or .bike() runs it.";
    }

    private Solving spanning(Function<Optional<Mode>, Span> span) {
        return new Solving(ride, Asked.with(spans, List.of(span)), targets, mode);
    }
}
