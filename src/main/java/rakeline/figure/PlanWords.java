package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
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
import rakeline.quantity.Reading;

/** What a plan view says: how far the wheel is turned, and how much room the shoe has and where it has least. */
final class PlanWords {
    private static final double BELOW = 60;

    private PlanWords() {}

    static List<Mark> of(Ride ride, double steerDeg) {
        Geometry geometry = ride.geometry();
        List<Mark> marks = new ArrayList<>(turned(geometry, steerDeg));
        if (geometry.bike().hasGroup("crank") && geometry.bike().hasGroup("shoe")) {
            marks.add(room(geometry));
        }
        return marks;
    }

    /** How far the wheel is turned from where it points straight ahead. */
    static List<Mark> turned(Geometry geometry, double steerDeg) {
        return List.of(line(geometry, 0), line(geometry, steerDeg), angle(geometry, steerDeg));
    }

    /** The wheel's plane at the height of its axle, a little longer than the wheel. */
    private static Path line(Geometry geometry, double steerDeg) {
        double beyond = geometry.side().frontRadiusMm() + 30;
        SteeredWheel wheel = new SteeredWheel(geometry.side(), Math.toRadians(steerDeg));
        return new Path(List.of(on(wheel.rim(beyond, Math.PI)), on(wheel.rim(beyond, 0))), false, false, Ink.DASHED, 0);
    }

    private static Label angle(Geometry geometry, double steerDeg) {
        SteeredWheel wheel = new SteeredWheel(geometry.side(), Math.toRadians(steerDeg));
        Drawing.Point tip = on(wheel.rim(geometry.side().frontRadiusMm() + 30, 0));
        return new Label(
                new Drawing.Point(tip.x(), tip.y() + Math.signum(steerDeg) * BELOW),
                "turned " + Decimals.fixed(steerDeg, 1) + "°",
                Ink.SOFT,
                0);
    }

    private static Label room(Geometry geometry) {
        Bike bike = geometry.bike();
        Drawing.Point under = new Drawing.Point(
                bike.get(Inputs.CRANK_LENGTH),
                -bike.get(Inputs.STANCE_WIDTH) / 2 - BELOW - bike.get(Inputs.TOE_RADIUS));
        return new Label(under, words(geometry), Ink.SOFT, 0);
    }

    private static String words(Geometry geometry) {
        String room = "toe room " + shown(ToeMeasures.TOE_ROOM, geometry) + ", least at "
                + shown(ToeMeasures.TOE_ROOM_STEER, geometry) + " of steer";
        return ToeMeasures.TOE_CONTACT_STEER.read(geometry) instanceof Reading.Known
                ? room + "; they meet from " + shown(ToeMeasures.TOE_CONTACT_STEER, geometry) + " on"
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
