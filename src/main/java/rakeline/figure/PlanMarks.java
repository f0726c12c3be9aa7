package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.figure.Drawing.Point;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.SteeredWheel;

/** The marks of a plan view: from above, x forward to the right, the rider's left upward. */
final class PlanMarks {
    private static final int ROUND = 72;
    private static final double HEEL = -170;

    private PlanMarks() {}

    static List<Mark> of(Geometry geometry, double steerRad) {
        List<Mark> marks = new ArrayList<>();
        marks.add(tyre(geometry, 0, Ink.FAINT));
        marks.add(tyre(geometry, steerRad, Ink.BOLD));
        if (geometry.bike().hasGroup("crank")) {
            marks.addAll(feet(geometry.bike()));
        }
        return List.copyOf(marks);
    }

    /** Outline of tyre and guard: the hull of discs along the turned ring. */
    private static Path tyre(Geometry geometry, double steerRad, Ink ink) {
        Bike bike = geometry.bike();
        SteeredWheel wheel = new SteeredWheel(geometry.side(), steerRad);
        double half = bike.get(Inputs.FRONT_TYRE) / 2;
        double ring = geometry.side().frontRadiusMm() - half;
        double tube = half + (bike.has(Inputs.MUDGUARD_GAP) ? bike.get(Inputs.MUDGUARD_GAP) : 0);
        List<Point> discs = new ArrayList<>();
        for (int i = 0; i < ROUND; i++) {
            rakeline.geometry.Point centre = wheel.rim(ring, 2 * Math.PI * i / ROUND);
            for (int j = 0; j < ROUND; j += 6) {
                double round = 2 * Math.PI * j / ROUND;
                discs.add(new Point(centre.x() + tube * Math.cos(round), -centre.y() + tube * Math.sin(round)));
            }
        }
        return new Path(Hull.of(discs), true, false, ink, 0);
    }

    private static List<Mark> feet(Bike bike) {
        double crank = bike.get(Inputs.CRANK_LENGTH);
        double half = bike.get(Inputs.STANCE_WIDTH) / 2;
        List<Mark> marks = new ArrayList<>();
        marks.add(new Path(
                List.of(new Point(-crank, half), new Point(0, half), new Point(0, -half), new Point(crank, -half)),
                false,
                false,
                Ink.FINE,
                0));
        marks.add(pedal(bike, crank, -half));
        marks.add(pedal(bike, -crank, half));
        if (bike.hasGroup("shoe")) {
            marks.add(shoe(bike, new Point(crank, -half), -1));
            marks.add(shoe(bike, new Point(-crank, half), 1));
        }
        return marks;
    }

    private static Mark pedal(Bike bike, double x, double y) {
        double half = bike.get(Inputs.PEDAL_HALF_WIDTH);
        return new Path(
                List.of(
                        new Point(x - 35, y - half),
                        new Point(x + 35, y - half),
                        new Point(x + 35, y + half),
                        new Point(x - 35, y + half)),
                true,
                false,
                Ink.FINE,
                0);
    }

    /** The shoe's outline: heel and the capsule of its toe, turned outward. */
    private static Mark shoe(Bike bike, Point pedal, int outward) {
        double ahead = bike.get(Inputs.TOE_FORWARD) - bike.get(Inputs.TOE_RADIUS);
        double radius = bike.get(Inputs.TOE_RADIUS);
        double half = bike.get(Inputs.TOE_HALF_WIDTH);
        double out = outward * Math.toRadians(bike.get(Inputs.TOE_OUT));
        List<Point> discs = new ArrayList<>();
        for (int i = 0; i < ROUND; i++) {
            double round = 2 * Math.PI * i / ROUND;
            Point disc = new Point(radius * Math.cos(round), radius * Math.sin(round));
            discs.add(turned(ahead + disc.x(), half + disc.y(), out, pedal));
            discs.add(turned(ahead + disc.x(), -half + disc.y(), out, pedal));
            discs.add(turned(HEEL + 30 + disc.x(), disc.y() * 1.2, out, pedal));
        }
        return new Path(Hull.of(discs), true, false, Ink.SOFT, 0);
    }

    /** The foremost point of the right shoe, cranks level. */
    static Point foremost(Bike bike) {
        double ahead = bike.get(Inputs.TOE_FORWARD) - bike.get(Inputs.TOE_RADIUS);
        double half = bike.get(Inputs.TOE_HALF_WIDTH);
        double out = -Math.toRadians(bike.get(Inputs.TOE_OUT));
        Point pedal = new Point(bike.get(Inputs.CRANK_LENGTH), -bike.get(Inputs.STANCE_WIDTH) / 2);
        Point one = turned(ahead, half, out, pedal);
        Point other = turned(ahead, -half, out, pedal);
        Point end = one.x() >= other.x() ? one : other;
        return new Point(end.x() + bike.get(Inputs.TOE_RADIUS), end.y());
    }

    private static Point turned(double x, double y, double angle, Point about) {
        return new Point(
                about.x() + x * Math.cos(angle) - y * Math.sin(angle),
                about.y() + x * Math.sin(angle) + y * Math.cos(angle));
    }
}
