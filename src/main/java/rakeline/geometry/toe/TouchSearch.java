package rakeline.geometry.toe;

import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.Queue;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * The smallest steering angle at which a gap closes, by halving patches, those of the smallest steering angle first.
 */
record TouchSearch(SweptRing ring, GapField gap) {
    private static final double BRACKET = Math.toRadians(0.1);
    private static final double SMALLEST_MM = 1e-5;
    private static final int MOST_PATCHES = 40_000;
    private static final double ACCURACY = 1e-10;

    /**
     * Finds the first touch.
     *
     * @param touching a steering angle at which they touch, radians
     * @return the smallest such angle, radians
     */
    double before(double touching) {
        Queue<Patch> open = new PriorityQueue<>(Comparator.comparingDouble(Patch::fromSteer)
                .thenComparingDouble(Patch::floor)
                .thenComparingDouble(Patch::turn));
        double latest = touching;
        for (Patch patch : Patch.all(0, touching)) {
            latest = look(patch, latest, open);
        }
        for (int i = 0; i < MOST_PATCHES && open(open.peek(), latest); i++) {
            for (Patch half : open.remove().halves(ring)) {
                latest = look(half, latest, open);
            }
        }
        return open.isEmpty() ? latest : between(Math.max(0, open.peek().fromSteer()), latest);
    }

    private static boolean open(Patch patch, double latest) {
        return patch != null && patch.fromSteer() < latest - BRACKET;
    }

    private double look(Patch patch, double latest, Queue<Patch> open) {
        RingPoint middle = ring.at(patch.steer(), patch.turn());
        Point point = middle.point();
        Sample sample = gap.at(point);
        double spread = middle.spread(patch.halfSteer(), patch.halfTurn());
        double floor = new Floor(gap, middle, point, sample).of(patch, spread, 0);
        double earlier = sample.value() <= 0 ? Math.min(latest, patch.steer()) : latest;
        if (floor <= 0 && spread > SMALLEST_MM && patch.fromSteer() < earlier) {
            open.add(patch.withFloor(floor));
        }
        return earlier;
    }

    private double between(double apart, double touching) {
        if (apart >= touching || gapAt(apart) <= 0) {
            return Math.min(apart, touching);
        }
        return gapAt(touching) >= 0 ? touching : new BrentSolver(ACCURACY).solve(100, this::gapAt, apart, touching);
    }

    private double gapAt(double steer) {
        return new LeastSearch(ring, gap, Double.NEGATIVE_INFINITY).at(steer).value();
    }
}
