package rakeline.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;

/** The doubts about a swept bike's inputs, the swept one among them, carried to what is tracked at every step. */
final class SweptDoubts {
    private final Sweep sweep;
    private final List<Optional<Bike>> bikes;
    private final List<Numbers> values;

    private SweptDoubts(Sweep sweep, List<Optional<Bike>> bikes, List<Numbers> values) {
        this.sweep = sweep;
        this.bikes = bikes;
        this.values = values;
    }

    /**
     * A standard uncertainty for each step of each tracked measure; NaN where it has none.
     *
     * @param bikes one for each step that has one
     * @param values of the tracked measures at every step
     */
    static List<Numbers> of(
            Sweep sweep, List<Optional<Bike>> bikes, List<Numbers> values, Crew crew, Progress progress) {
        SweptDoubts doubts = new SweptDoubts(sweep, bikes, values);
        double[][] columns = new Sparse(sweep.steps(), doubts::read, values).columns(crew, progress);
        return IntStream.range(0, values.size())
                .mapToObj(track -> Numbers.generate(
                        bikes.size(),
                        step -> FirstOrder.agreed(columns[2 * track][step], columns[2 * track + 1][step])))
                .toList();
    }

    /** For each tracked measure the linear figure and that of second order; NaN where it has no value itself. */
    private double[] read(int step) {
        double[] figures = new double[2 * sweep.tracks().size()];
        Arrays.fill(figures, Double.NaN);
        bikes.get(step).map(bike -> carried(sweep.start().on(bike))).ifPresent(doubts -> read(doubts, step, figures));
        return figures;
    }

    private void read(FirstOrder doubts, int step, double[] figures) {
        for (int track = 0; track < sweep.tracks().size(); track++) {
            if (!Double.isNaN(values.get(track).at(step))) {
                Measure<Ride> measure = sweep.tracks().get(track);
                figures[2 * track] = doubts.linear(measure);
                figures[2 * track + 1] = doubts.second(measure);
            }
        }
    }

    private static FirstOrder carried(Ride ride) {
        return new FirstOrder(ride, Doubt.about(ride.bike(), true));
    }

    /** Which inputs are uncertain and by how much, those that move none of the tracked measures left out. */
    static String words(Sweep sweep) {
        List<Doubt> doubts = Doubt.about(sweep.bike(), true);
        FirstOrder carried = carried(sweep.start());
        List<Numbers> parts = new ArrayList<>();
        sweep.tracks().forEach(measure -> parts.add(carried.parts(measure)));
        return IntStream.range(0, doubts.size())
                .filter(doubt -> parts.stream().anyMatch(of -> of.at(doubt) != 0))
                .mapToObj(doubt -> doubts.get(doubt).words())
                .collect(Collectors.joining(", "));
    }
}
