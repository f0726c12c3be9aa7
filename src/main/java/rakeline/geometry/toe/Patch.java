package rakeline.geometry.toe;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A part of the swept ring, in radians, and a number that a field stays above on it.
 *
 * @param steer steering angle of its middle
 * @param turn angle on the ring of its middle
 */
record Patch(double steer, double turn, double halfSteer, double halfTurn, double floor) implements Comparable<Patch> {
    private static final int SECTORS = 8;
    private static final double UNKNOWN = Double.NEGATIVE_INFINITY;

    /** A whole round of the ring over a range of steering angles, in parts. */
    static List<Patch> all(double fromSteer, double toSteer) {
        double half = Math.PI / SECTORS;
        double middle = (fromSteer + toSteer) / 2;
        return IntStream.range(0, SECTORS)
                .mapToObj(i -> new Patch(middle, half + 2 * half * i, (toSteer - fromSteer) / 2, half, UNKNOWN))
                .toList();
    }

    /** Two halves, cut across the longer way. */
    List<Patch> halves(SweptRing ring) {
        RingPoint middle = ring.at(steer, turn);
        return middle.spread(halfSteer, 0) > middle.spread(0, halfTurn) ? cutSteer() : cutTurn();
    }

    private List<Patch> cutSteer() {
        double half = halfSteer / 2;
        return List.of(
                new Patch(steer - half, turn, half, halfTurn, floor),
                new Patch(steer + half, turn, half, halfTurn, floor));
    }

    private List<Patch> cutTurn() {
        double half = halfTurn / 2;
        return List.of(
                new Patch(steer, turn - half, halfSteer, half, floor),
                new Patch(steer, turn + half, halfSteer, half, floor));
    }

    double fromSteer() {
        return steer - halfSteer;
    }

    Patch withFloor(double newFloor) {
        return new Patch(steer, turn, halfSteer, halfTurn, newFloor);
    }

    /** Lowest floor first; where two are alike, smaller steering angle, then smaller turn. */
    @Override
    public int compareTo(Patch other) {
        int byFloor = Double.compare(floor, other.floor);
        if (byFloor != 0) {
            return byFloor;
        }
        int bySteer = Double.compare(steer, other.steer);
        return bySteer != 0 ? bySteer : Double.compare(turn, other.turn);
    }
}
