package rakeline.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;

/** Doubts about one bike carried to its measures to first order, each doubt independent of the others. */
public final class FirstOrder {
    /** Slopes are taken across so many standard uncertainties, or fewer. */
    private static final double STEP = 0.25;

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

    /** About a bike with whoever is on it; measures are asked for one after the other. */
    public FirstOrder(Ride start, List<Doubt> doubts) {
        this.start = start;
        this.doubts = doubts;
        this.bikes = new Doubtful(start.bike(), doubts);
    }

    /** What each doubt alone contributes, signed: slope times standard uncertainty; NaN where it has none. */
    public Numbers parts(Measure<Ride> measure) {
        return Numbers.generate(
                doubts.size(),
                doubt -> Derivative.at0(by -> read(doubt, by, measure), STEP, Derivative.COARSE)
                        .slope());
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
        return root(parts(measure));
    }

    /** The same from one standard uncertainty to either side, to second order. */
    double second(Measure<Ride> measure) {
        return root(Numbers.generate(doubts.size(), doubt -> secondOrder(doubt, measure)));
    }

    static double root(Numbers parts) {
        return Math.sqrt(parts.stream().map(part -> part * part).sum());
    }

    /** The deviation of a + bx + cx² for a normal x of deviation 1: the root of b² + 2c². */
    private double secondOrder(int doubt, Measure<Ride> measure) {
        double here = measure.read(start).orNaN();
        double up = read(doubt, 1, measure);
        double down = read(doubt, -1, measure);
        if (Double.isNaN(up) != Double.isNaN(down)) {
            int side = Double.isNaN(up) ? -1 : 1;
            double near = Double.isNaN(up) ? down : up;
            double far = read(doubt, 2 * side, measure);
            return deviation((4 * near - far - 3 * here) / 2, (far - 2 * near + here) / 2);
        }
        return deviation((up - down) / 2, (up + down) / 2 - here);
    }

    private static double deviation(double straight, double bent) {
        return Math.sqrt(straight * straight + 2 * bent * bent);
    }

    private double read(int doubt, double deviation, Measure<Ride> measure) {
        Optional<Ride> ride = known.computeIfAbsent(
                new Place(doubt, deviation),
                at -> bikes.at(at.doubt(), at.deviation()).map(start::beside));
        return ride.isEmpty() ? Double.NaN : measure.read(ride.get()).orNaN();
    }
}
