package rakeline.geometry.toe;

import java.util.PriorityQueue;
import java.util.Queue;

/**
 * The least of a field over the swept ring, by halving patches, the most promising first, and leaving out those whose
 * floor is no lower than what has been found (branch and bound: Land and Doig 1960).
 *
 * @param enough a value below which no lower one is sought, mm
 */
record LeastSearch(SweptRing ring, Field field, double enough) {
    private static final double TOLERANCE_MM = 1e-8;
    private static final double SMALLEST_MM = 1e-5;
    private static final int MOST_PATCHES = 40_000;

    /** Searches a range of steering angles, radians; none where the field has no value anywhere. */
    Spot over(double fromSteer, double toSteer) {
        Spot straight = over(fromSteer, fromSteer, Spot.none());
        Spot ends = over(toSteer, toSteer, straight);
        return over(fromSteer, toSteer, ends);
    }

    /** Searches one steering angle, radians. */
    Spot at(double steer) {
        return over(steer, steer, Spot.none());
    }

    private Spot over(double fromSteer, double toSteer, Spot known) {
        Queue<Patch> open = new PriorityQueue<>();
        Spot best = known;
        for (Patch patch : Patch.all(fromSteer, toSteer)) {
            best = look(patch, best, open);
        }
        for (int i = 0; i < MOST_PATCHES && promising(open.peek(), best); i++) {
            for (Patch half : open.remove().halves(ring)) {
                best = look(half, best, open);
            }
        }
        return best;
    }

    private boolean promising(Patch patch, Spot best) {
        return patch != null && best.value() > enough && patch.floor() < best.value() - TOLERANCE_MM;
    }

    private Spot look(Patch patch, Spot best, Queue<Patch> open) {
        RingPoint middle = ring.at(patch.steer(), patch.turn());
        Point point = middle.point();
        Sample sample = field.at(point);
        Spot better = sample.value() < best.value() ? new Spot(sample.value(), patch.steer(), patch.turn()) : best;
        double spread = middle.spread(patch.halfSteer(), patch.halfTurn());
        if (spread > SMALLEST_MM) {
            double floor = new Floor(field, middle, point, sample).of(patch, spread, better.value() - TOLERANCE_MM);
            if (floor < better.value() - TOLERANCE_MM) {
                open.add(patch.withFloor(Math.max(floor, patch.floor())));
            }
        }
        return better;
    }
}
