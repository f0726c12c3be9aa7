package rakeline.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;

/** Doubts about one bike carried to its measures to first order, each doubt independent of the others. */
final class FirstOrder {
    /** Slopes are taken across so many standard uncertainties. */
    private static final double STEP = 0.02;

    /** The figure is withheld where the second order moves it by more than this share. */
    private static final double APART = 0.1;

    /** Less than this is no difference, in the measure's unit. */
    private static final double NOTHING = 1e-6;

    private final Ride start;
    private final List<Doubt> doubts;
    private final Doubtful bikes;
    private final Map<Place, Optional<Ride>> known = new HashMap<>();

    /** One doubt off by so many standard uncertainties. */
    private record Place(int doubt, double deviation) {}

    FirstOrder(Ride start, List<Doubt> doubts) {
        this.start = start;
        this.doubts = doubts;
        this.bikes = new Doubtful(start.bike(), doubts);
    }

    /** What each doubt alone contributes, signed: slope times standard uncertainty; NaN where it has none. */
    Numbers parts(Measure<Ride> measure) {
        return Numbers.generate(doubts.size(), doubt -> Slope.at0(by -> read(doubt, by, measure), STEP));
    }

    /**
     * The root of the sum of the squared parts; NaN where the measure has no value at one standard uncertainty of a
     * doubt, or where the linear figure would mislead.
     */
    double of(Measure<Ride> measure) {
        return agreed(linear(measure), second(measure));
    }

    /** The linear figure, unless the second order tells another story. */
    static double agreed(double linear, double second) {
        boolean agrees = Math.abs(linear - second) <= Math.max(NOTHING, APART * Math.max(linear, second));
        return agrees ? linear : Double.NaN;
    }

    /** The root of the sum of the squared parts, whether it misleads or not; NaN where a part has no value. */
    double linear(Measure<Ride> measure) {
        return root(Numbers.generate(doubts.size(), doubt -> slope(doubt, measure)));
    }

    /** The same from one standard uncertainty to either side, to second order. */
    double second(Measure<Ride> measure) {
        return root(Numbers.generate(doubts.size(), doubt -> secondOrder(doubt, measure)));
    }

    /** Two places are enough so close by; where one has no value, those to the other side are asked. */
    private double slope(int doubt, Measure<Ride> measure) {
        double both = (read(doubt, STEP, measure) - read(doubt, -STEP, measure)) / (2 * STEP);
        return Double.isNaN(both) ? Slope.at0(by -> read(doubt, by, measure), STEP) : both;
    }

    static double root(Numbers parts) {
        return Math.sqrt(parts.stream().map(part -> part * part).sum());
    }

    /** The deviation of a + bx + cx² for a normal x of deviation 1: the root of b² + 2c². */
    private double secondOrder(int doubt, Measure<Ride> measure) {
        double up = read(doubt, 1, measure);
        double down = read(doubt, -1, measure);
        double straight = (up - down) / 2;
        double bent = (up + down) / 2 - measure.read(start).orNaN();
        return Math.sqrt(straight * straight + 2 * bent * bent);
    }

    private double read(int doubt, double deviation, Measure<Ride> measure) {
        Optional<Ride> ride = known.computeIfAbsent(
                new Place(doubt, deviation),
                at -> bikes.at(at.doubt(), at.deviation()).map(start::beside));
        return ride.isEmpty() ? Double.NaN : measure.read(ride.get()).orNaN();
    }
}
