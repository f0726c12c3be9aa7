package rakeline.geometry.toe;

import java.util.PriorityQueue;

/**
 * The least of a field over the swept ring.
 *
 * @param enough a value below which no lower one is sought, mm
 */
record LeastSearch(SweptRing ring, Field field, double enough) implements Halving {
    private static final double TOLERANCE_MM = 1e-8;

    LeastSearch(SweptRing ring, Field field) {
        this(ring, field, Double.NEGATIVE_INFINITY);
    }

    /** Searches a range of steering angles, radians; none where the field has no value anywhere. */
    Spot over(double fromSteer, double toSteer) {
        Spot least = halve(toSteer, toSteer, at(fromSteer), new PriorityQueue<>());
        return halve(fromSteer, toSteer, least, new PriorityQueue<>());
    }

    /** Searches one steering angle, radians. */
    Spot at(double steer) {
        return halve(steer, steer, Spot.none(), new PriorityQueue<>());
    }

    @Override
    public boolean better(Spot spot, Spot best) {
        return spot.value() < best.value();
    }

    @Override
    public double ceiling(Spot best) {
        return best.value() - TOLERANCE_MM;
    }

    @Override
    public boolean hopeful(Patch patch, Spot best) {
        return patch.floor() < ceiling(best);
    }

    @Override
    public boolean settled(Patch next, Spot best) {
        return best.value() <= enough || !hopeful(next, best);
    }
}
