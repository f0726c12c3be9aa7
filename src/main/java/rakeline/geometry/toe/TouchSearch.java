package rakeline.geometry.toe;

import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.Queue;
import org.hipparchus.analysis.solvers.BrentSolver;

/** The smallest steering angle at which a gap closes: patches narrow it down, a root finder ends it. */
record TouchSearch(SweptRing ring, Field field) implements Halving {
    private static final double BRACKET = Math.toRadians(0.1);
    private static final double ACCURACY = 1e-10;
    private static final int MOST_STEPS = 100;

    /**
     * Finds the first touch.
     *
     * @param touching a spot in which they touch
     * @return the smallest steering angle at which they do, radians
     */
    double before(Spot touching) {
        Queue<Patch> open = new PriorityQueue<>(
                Comparator.comparingDouble(Patch::fromSteer).thenComparing(Comparator.naturalOrder()));
        double latest = halve(0, touching.steer(), touching, open).steer();
        return open.isEmpty() ? latest : between(Math.max(0, open.peek().fromSteer()), latest);
    }

    @Override
    public boolean better(Spot spot, Spot best) {
        return spot.value() <= 0 && spot.steer() < best.steer();
    }

    @Override
    public double ceiling(Spot best) {
        return 0;
    }

    @Override
    public boolean hopeful(Patch patch, Spot best) {
        return patch.floor() <= 0 && patch.fromSteer() < best.steer();
    }

    @Override
    public boolean settled(Patch next, Spot best) {
        return next.fromSteer() >= best.steer() - BRACKET;
    }

    /** Between an angle before which nothing touches and one at which something does. */
    private double between(double apart, double touching) {
        if (apart >= touching || gap(apart) <= 0) {
            return Math.min(apart, touching);
        }
        return gap(touching) >= 0 ? touching : new BrentSolver(ACCURACY).solve(MOST_STEPS, this::gap, apart, touching);
    }

    private double gap(double steer) {
        return new LeastSearch(ring, field).at(steer).value();
    }
}
