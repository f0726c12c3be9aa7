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
    private final double[][] sizes;

    private SweptDoubts(Sweep sweep) {
        this.sweep = sweep;
        this.sizes = new double[sweep.tracks().size()][sweep.steps().size()];
    }

    /**
     * A standard uncertainty for each step of each tracked measure; NaN where it has none.
     *
     * @param bikes one for each step that has one
     */
    static List<Numbers> of(Sweep sweep, List<Optional<Bike>> bikes) {
        SweptDoubts doubts = new SweptDoubts(sweep);
        Crew.onAllCores().each(bikes.size(), step -> doubts.read(bikes.get(step), step), Progress.UNWATCHED);
        return Arrays.stream(doubts.sizes).map(Numbers::of).toList();
    }

    private void read(Optional<Bike> bike, int step) {
        Optional<FirstOrder> carried = bike.map(one -> carried(sweep.start().on(one)));
        for (int track = 0; track < sizes.length; track++) {
            Measure<Ride> measure = sweep.tracks().get(track);
            sizes[track][step] = carried.map(doubts -> doubts.of(measure)).orElse(Double.NaN);
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
