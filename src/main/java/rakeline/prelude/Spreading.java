package rakeline.prelude;

import java.util.List;
import rakeline.figure.StudyTables;
import rakeline.figure.Table;
import rakeline.handling.Ride;
import rakeline.quantity.Keyed;
import rakeline.quantity.Measure;
import rakeline.study.Doubt;
import rakeline.study.Scatter;
import rakeline.study.Spread;
import rakeline.study.Vocabulary;

/** A spread of uncertainties being said, as in {@code spread(it).of(TRAIL).table()}. Each word returns a new one. */
public final class Spreading {
    private final Ride ride;
    private final List<Measure<Ride>> tracks;
    private final int draws;
    private final boolean wheelsShare;

    private Spreading(Ride ride, List<Measure<Ride>> tracks, int draws, boolean wheelsShare) {
        this.ride = ride;
        this.tracks = tracks;
        this.draws = draws;
        this.wheelsShare = wheelsShare;
    }

    static Spreading of(Ride ride) {
        return new Spreading(ride, List.of(), Spread.USUAL_DRAWS, true);
    }

    /** Carries them to these measures; without, to all that the bike has the inputs for. */
    public Spreading of(String... keys) {
        return new Spreading(ride, Asked.with(tracks, Asked.tracked(keys)), draws, wheelsShare);
    }

    /** Carries the uncertainties to these measures. */
    public Spreading of(Keyed... declared) {
        return of(Asked.keys(declared));
    }

    /**
     * Draws the inputs so often.
     *
     * @param count how many, even, 2 or more; 10,000 where nothing is said
     */
    public Spreading draws(int count) {
        return new Spreading(ride, tracks, count, wheelsShare);
    }

    /** Lets each wheel's radius be off by itself, instead of both by the same. */
    public Spreading wheelsApart() {
        return new Spreading(ride, tracks, draws, false);
    }

    /** Value, deviation of the draws, linear figure, share without a value. */
    public Table table() {
        return StudyTables.of(run());
    }

    /** What the uncertainty of each input alone contributes to each measure, in the measure's unit. */
    public Table parts() {
        return StudyTables.parts(run());
    }

    /** The result as values, to go on with in Java. */
    public Scatter run() {
        List<Measure<Ride>> asked = tracks.isEmpty() ? Vocabulary.standard().chosen(List.of(), ride) : tracks;
        return new Spread(ride, Doubt.about(ride.bike(), wheelsShare), asked, draws, Spread.USUAL_SEED).run();
    }

    @Override
    public String toString() {
        return "A spread of " + ride.bike().name() + "; .table() or .parts() runs it.";
    }
}
