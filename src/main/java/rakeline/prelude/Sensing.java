package rakeline.prelude;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rakeline.figure.StudyTables;
import rakeline.figure.Table;
import rakeline.handling.Ride;
import rakeline.quantity.Keyed;
import rakeline.quantity.Measure;
import rakeline.study.Doubt;
import rakeline.study.Sensitivities;
import rakeline.study.Sensitivity;
import rakeline.study.Varied;
import rakeline.study.Vocabulary;

/** A sensitivity being said, as in {@code sensitivity(it).by(HEAD_ANGLE).of(TRAIL).table()}. Each word returns a new one. */
public final class Sensing {
    private final Ride ride;
    private final List<String> inputs;
    private final List<Measure<Ride>> tracks;

    private Sensing(Ride ride, List<String> inputs, List<Measure<Ride>> tracks) {
        this.ride = ride;
        this.inputs = inputs;
        this.tracks = tracks;
    }

    static Sensing of(Ride ride) {
        return new Sensing(ride, List.of(), List.of());
    }

    /** How the measures answer to these inputs; where none is named, to those whose uncertainty is known. */
    public Sensing by(String... inputKeys) {
        return new Sensing(ride, Asked.with(inputs, Arrays.asList(inputKeys)), tracks);
    }

    /** How the measures answer to these inputs. */
    public Sensing by(Keyed... declared) {
        return by(Asked.keys(declared));
    }

    /** How these measures, or inputs, answer; where none is named, all that the bike has the inputs for. */
    public Sensing of(String... keys) {
        return new Sensing(ride, inputs, Asked.with(tracks, Asked.tracked(keys)));
    }

    /** How these measures, or inputs, answer. */
    public Sensing of(Keyed... declared) {
        return of(Asked.keys(declared));
    }

    /** Measures under one another, an input a column: how much each measure changes per mm or degree of the input. */
    public Table table() {
        return StudyTables.of(run());
    }

    /** The result as values, to go on with in Java. */
    public Sensitivities run() {
        List<String> keys = inputs.isEmpty()
                ? Doubt.about(ride.bike(), true).stream().map(Doubt::key).toList()
                : inputs;
        List<Varied> varied =
                keys.stream().map(key -> Asked.varied(key, Optional.empty())).toList();
        List<Measure<Ride>> asked = tracks.isEmpty() ? Vocabulary.standard().chosen(List.of(), ride) : tracks;
        return new Sensitivity(ride, varied, asked).run();
    }

    @Override
    public String toString() {
        return "A sensitivity of " + ride.bike().name() + "; .table() runs it.";
    }
}
