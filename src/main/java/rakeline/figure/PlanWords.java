package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Handle;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Label;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.geometry.SteeredWheel;
import rakeline.geometry.ToeMeasures;
import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;

/** What a plan view says: how far the wheel is turned, and how much room the shoe has and where it has least. */
final class PlanWords {
    private static final double BELOW = 60;
    private static final double STEP = 0.01;
    private static final int ARC = 16;

    private PlanWords() {}

    static List<Mark> of(Ride ride, double steerDeg) {
        Geometry geometry = ride.geometry();
        List<Mark> marks = new ArrayList<>(turned(geometry, steerDeg));
        handle(geometry, steerDeg).ifPresent(marks::add);
        if (geometry.bike().hasGroup("crank") && geometry.bike().hasGroup("shoe")) {
            dimension(geometry).ifPresent(marks::add);
            marks.add(room(geometry));
        }
        return marks;
    }

    /** How far the wheel is turned from where it points straight ahead. */
    static List<Mark> turned(Geometry geometry, double steerDeg) {
        return List.of(line(geometry, 0), line(geometry, steerDeg), way(geometry, steerDeg), angle(geometry, steerDeg));
    }

    /** The wheel's plane at the height of its axle, a little longer than the wheel. */
    private static Path line(Geometry geometry, double steerDeg) {
        double beyond = geometry.side().frontRadiusMm() + 30;
        SteeredWheel wheel = new SteeredWheel(geometry.side(), Math.toRadians(steerDeg));
        return new Path(List.of(on(wheel.rim(beyond, Math.PI)), on(wheel.rim(beyond, 0))), false, false, Ink.DASHED, 0);
    }

    /** The foremost point of the wheel's plane, a little ahead of the wheel. */
    private static Drawing.Point tip(Geometry geometry, double steerDeg) {
        SteeredWheel wheel = new SteeredWheel(geometry.side(), Math.toRadians(steerDeg));
        return on(wheel.rim(geometry.side().frontRadiusMm() + 30, 0));
    }

    /** The way of that point from straight ahead. */
    private static Path way(Geometry geometry, double steerDeg) {
        List<Drawing.Point> points = IntStream.rangeClosed(0, ARC)
                .mapToObj(i -> tip(geometry, steerDeg * i / ARC))
                .toList();
        return new Path(points, false, false, Ink.FINE, 0);
    }

    private static Optional<Handle> handle(Geometry geometry, double steerDeg) {
        Drawing.Point next = tip(geometry, steerDeg + STEP);
        return Handle.moving(Inputs.RIDE_STEER.quantity(), steerDeg, tip(geometry, steerDeg), next, STEP, 0);
    }

    private static Label angle(Geometry geometry, double steerDeg) {
        Drawing.Point tip = tip(geometry, steerDeg);
        return new Label(
                new Drawing.Point(tip.x(), tip.y() + Math.signum(steerDeg) * BELOW),
                "turned " + Decimals.fixed(steerDeg, 1) + "°",
                Ink.SOFT,
                0);
    }

    /** From the foremost point of the right shoe to where the room ends; backward where there is none. */
    private static Optional<Mark> dimension(Geometry geometry) {
        Quantity quantity = ToeMeasures.TOE_ROOM.quantity();
        double room = ToeMeasures.TOE_ROOM.read(geometry).orNaN();
        Drawing.Point toe = PlanMarks.foremost(geometry.bike());
        Drawing.Point end = new Drawing.Point(toe.x() + room, toe.y());
        String text = "toe room " + quantity.formatWithUnit(room);
        return Double.isNaN(room)
                ? Optional.empty()
                : Optional.of(new Dimension(
                        toe, end, room > 0 ? -1.5 * BELOW : 1.5 * BELOW, text, quantity.key(), Ink.FINE, 0));
    }

    private static Label room(Geometry geometry) {
        Bike bike = geometry.bike();
        Drawing.Point under = new Drawing.Point(
                bike.get(Inputs.CRANK_LENGTH) / 2,
                -bike.get(Inputs.STANCE_WIDTH) / 2 - 1.8 * BELOW - bike.get(Inputs.TOE_RADIUS));
        return new Label(under, words(geometry), Ink.SOFT, 0);
    }

    private static String words(Geometry geometry) {
        String room = "least toe room with the bar turned " + shown(ToeMeasures.TOE_ROOM_STEER, geometry);
        return ToeMeasures.TOE_CONTACT_STEER.read(geometry) instanceof Reading.Known
                ? room + "; toe and tyre first touch at " + shown(ToeMeasures.TOE_CONTACT_STEER, geometry)
                : room;
    }

    private static String shown(Measure<Geometry> measure, Geometry geometry) {
        return measure.quantity().formatWithUnit(measure.read(geometry).orNaN());
    }

    /** From above the rider's right is downward. */
    private static Drawing.Point on(Point fromAbove) {
        return new Drawing.Point(fromAbove.x(), -fromAbove.y());
    }
}
