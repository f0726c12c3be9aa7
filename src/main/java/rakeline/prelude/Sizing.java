package rakeline.prelude;

import java.util.List;
import java.util.Optional;
import rakeline.figure.StudyTables;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Keyed;
import rakeline.quantity.Measure;
import rakeline.quantity.Refusal;
import rakeline.study.SizeRun;
import rakeline.study.Sized;
import rakeline.study.Target;
import rakeline.study.Vocabulary;

/**
 * A size run being said, as in {@code sizes(xs, s, m).floor(FRONT_CENTRE, 575).hold(TRAIL, 58).table()}; each size's own
 * trail is held where nothing else is said. Each word returns a new one.
 */
public final class Sizing {
    private final List<Ride> sizes;
    private final Optional<Target> floor;
    private final SizeRun.Holding holding;
    private final List<Measure<Ride>> tracks;

    private Sizing(List<Ride> sizes, Optional<Target> floor, SizeRun.Holding holding, List<Measure<Ride>> tracks) {
        this.sizes = sizes;
        this.floor = floor;
        this.holding = holding;
        this.tracks = tracks;
    }

    static Sizing of(List<Ride> sizes) {
        return new Sizing(sizes, Optional.empty(), holding("trailMm", Double.NaN), List.of());
    }

    /**
     * The least that a measure, or an input, may have.
     *
     * @param value the least value, in the measure's unit
     */
    public Sizing floor(String key, double value) {
        Target target = new Target(Vocabulary.standard().tracked(key), value);
        return new Sizing(sizes, Optional.of(target), holding, tracks);
    }

    /**
     * The least that a measure, or an input, may have.
     *
     * @param value the least value, in the measure's unit
     */
    public Sizing floor(Measure<?> measure, double value) {
        return floor(measure.key(), value);
    }

    /** Holds a measure at each size's own value by the offset, or the offset itself. */
    public Sizing hold(String key) {
        return hold(key, Double.NaN);
    }

    /**
     * Holds a measure at a value by the offset, or the offset itself.
     *
     * @param value the value to hold, in the measure's unit
     */
    public Sizing hold(String key, double value) {
        return new Sizing(sizes, floor, holding(key, value), tracks);
    }

    /** Holds a measure at each size's own value by the offset, or the offset itself. */
    public Sizing hold(Keyed declared) {
        return hold(declared.key());
    }

    /**
     * Holds a measure at a value by the offset, or the offset itself.
     *
     * @param value the value to hold, in the measure's unit
     */
    public Sizing hold(Keyed declared, double value) {
        return hold(declared.key(), value);
    }

    /** Measures, or inputs, that follow for each size, side by side; where none is named, the usual ones. */
    public Sizing track(String... keys) {
        return new Sizing(sizes, floor, holding, Asked.with(tracks, Asked.tracked(keys)));
    }

    /** Measures, or inputs, that follow for each size, side by side. */
    public Sizing track(Keyed... declared) {
        return track(Asked.keys(declared));
    }

    /** A size a row: what it has, what it needs, what follows. */
    public Table table() {
        return StudyTables.of(run());
    }

    /** The bikes that the floor needs; sizes that no head angle brings there left out. */
    public List<Bike> bikes() {
        return run().bikes();
    }

    /** The result as values, to go on with in Java. */
    public Sized run() {
        Target least = floor.orElseThrow(() -> new Refusal("the size run has no floor; add .floor(measure, value)."));
        List<Measure<Ride>> asked = tracks.isEmpty() ? SizeRun.usualTracks(Vocabulary.standard(), sizes) : tracks;
        return new SizeRun(sizes, least, holding, asked).run();
    }

    @Override
    public String toString() {
        return "A run of " + sizes.size() + " sizes; .table() runs it.";
    }

    private static SizeRun.Holding holding(String key, double value) {
        return SizeRun.Holding.of(Vocabulary.standard(), key, value);
    }
}
