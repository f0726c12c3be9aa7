package rakeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Refusal;

/**
 * Carries the uncertainties of inputs to measures, linearly and by seeded draws.
 *
 * @param start the bike as it is, and who rides it
 * @param doubts what is uncertain; each doubt is independent of the others
 * @param draws how many, even, {@value #FEWEST} to {@value #MOST}
 * @param seed the same seed gives the same result, with any number of cores
 */
public record Spread(Ride start, List<Doubt> doubts, List<Measure<Ride>> tracks, int draws, long seed) {
    /** As many as are drawn where nothing else is said. */
    public static final int USUAL_DRAWS = 10_000;

    /** The seed where nothing else is said. */
    public static final long USUAL_SEED = 1;

    private static final int FEWEST = 100;
    private static final int MOST = 1_000_000;

    public Spread {
        doubts = List.copyOf(doubts);
        tracks = List.copyOf(tracks);
        if (draws < FEWEST || draws > MOST || draws % 2 != 0) {
            throw new Refusal("the number of draws is " + draws + "; accepted is an even one, 100..1000000.");
        }
    }

    /** The usual spread: every doubt about the bike, both wheels' radii with the same error, 10,000 draws. */
    public static Spread of(Ride start, List<Measure<Ride>> tracks) {
        return new Spread(start, Doubt.about(start.bike(), true), tracks, USUAL_DRAWS, USUAL_SEED);
    }

    /** Runs it on all cores. */
    public Scatter run() {
        return run(Crew.onAllCores(), Progress.UNWATCHED);
    }

    /**
     * Runs it.
     *
     * @return the same with any crew
     * @throws Refusal where the bike lacks what a measure needs
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    public Scatter run(Crew crew, Progress progress) {
        tracks.forEach(track -> SweepRun.checkComplete(track, start));
        Doubtful bikes = new Doubtful(start.bike(), doubts);
        double[][] deviations = Draws.of(draws, doubts.size(), seed);
        double[][] values = new double[draws][];
        crew.each(draws, i -> values[i] = read(bikes.at(deviations[i])), progress);
        FirstOrder linear = new FirstOrder(start, doubts);
        List<Scatter.Row> rows = new ArrayList<>();
        for (int track = 0; track < tracks.size(); track++) {
            rows.add(row(track, values, linear));
        }
        return new Scatter(this, rows);
    }

    private double[] read(Optional<Bike> bike) {
        double[] values = new double[tracks.size()];
        Optional<Ride> ride = bike.map(start::on);
        for (int i = 0; i < values.length; i++) {
            Measure<Ride> track = tracks.get(i);
            values[i] = ride.isEmpty() ? Double.NaN : track.read(ride.get()).orNaN();
        }
        return values;
    }

    private Scatter.Row row(int track, double[][] values, FirstOrder linear) {
        double[] known = IntStream.range(0, draws)
                .mapToDouble(draw -> values[draw][track])
                .filter(value -> !Double.isNaN(value))
                .toArray();
        Measure<Ride> measure = tracks.get(track);
        return Scatter.Row.of(
                measure.quantity(),
                measure.read(start).orNaN(),
                (double) (draws - known.length) / draws,
                linear.parts(measure),
                known);
    }
}
