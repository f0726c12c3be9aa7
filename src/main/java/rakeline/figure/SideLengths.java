package rakeline.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Label;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Point;
import rakeline.geometry.SeatAxis;
import rakeline.geometry.SideView;
import rakeline.quantity.Quantity;

/** Lengths and angles of a side view, each where it is measured, by key; {@link SideDimensions} has the others. */
final class SideLengths {
    private static final double BESIDE = 60;
    private static final double ARC = 260;
    private static final double ARC_STEP_DEG = 3;

    private final Geometry geometry;
    private final Bike bike;
    private final SideView side;
    private final SeatAxis seat;
    private final Point bb = new Point(0, 0);
    private final Point rear;
    private final Point front;
    private final Map<String, List<Mark>> marks = new LinkedHashMap<>();

    private SideLengths(Geometry geometry) {
        this.geometry = geometry;
        bike = geometry.bike();
        side = geometry.side();
        seat = SeatAxis.of(bike);
        rear = side.rearAxle();
        front = side.frontAxle();
    }

    static Map<String, List<Mark>> of(Geometry geometry) {
        SideLengths lengths = new SideLengths(geometry);
        lengths.wheels();
        lengths.frame();
        lengths.angles();
        lengths.frontEnd();
        lengths.cockpit();
        lengths.contact();
        return lengths.marks;
    }

    private void wheels() {
        length(Inputs.REAR_RADIUS.quantity(), rear, below(rear, bike.get(Inputs.REAR_RADIUS)), 0);
        length(Inputs.FRONT_RADIUS.quantity(), front, below(front, side.frontRadiusMm()), 0);
        length(Measures.FRONT_CENTRE.quantity(), bb, front, -BESIDE);
        length(Measures.REAR_CENTRE_X.quantity(), new Point(rear.x(), -side.bbHeightMm()), onGround(0), -BESIDE);
        length(Measures.BB_HEIGHT.quantity(), bb, onGround(0), 0);
    }

    private void frame() {
        length(Inputs.CHAINSTAY.quantity(), rear, bb, -BESIDE);
        length(Inputs.BB_DROP.quantity(), new Point(0, rear.y()), bb, 0);
        marks.get(Inputs.BB_DROP.key()).add(path(Ink.DASHED, rear, new Point(front.x(), rear.y())));
        if (bike.has(Inputs.SEAT_TUBE)) {
            length(Inputs.SEAT_TUBE.quantity(), seat.foot(), seat.at(bike.get(Inputs.SEAT_TUBE)), BESIDE);
        }
        Point top = side.onAxis(0);
        Point behind = new Point(seat.xAtHeight(top.y()), top.y());
        length(Measures.EFFECTIVE_TOP_TUBE.quantity(), behind, top, BESIDE);
    }

    private void angles() {
        Point axis = onGround(front.x() + side.trailMm());
        angle(Inputs.HEAD_ANGLE.quantity(), axis, bike.get(Inputs.HEAD_ANGLE));
        angle(Inputs.SEAT_ANGLE.quantity(), bb, bike.get(Inputs.SEAT_ANGLE));
        Point at = new Point(seat.xAtHeight(bike.get(Inputs.SEAT_ANGLE_AT)), bike.get(Inputs.SEAT_ANGLE_AT));
        marks.get(Inputs.SEAT_ANGLE.key()).add(path(Ink.DASHED, bb, at));
        length(Inputs.SEAT_ANGLE_AT.quantity(), at, new Point(at.x(), 0), 0);
        angle(Inputs.SEAT_TUBE_ANGLE.quantity(), seat.foot(), bike.get(Inputs.SEAT_TUBE_ANGLE));
    }

    private void frontEnd() {
        length(Inputs.FORK_OFFSET.quantity(), side.onAxis(-side.axisLengthMm()), front, 0);
        Point touch = onGround(front.x());
        Point square = new Point(side.sinHead(), side.cosHead()).times(side.mechanicalTrailMm());
        length(Measures.MECHANICAL_TRAIL.quantity(), touch, touch.plus(square), 0);
        if (bike.has(Inputs.HEAD_TUBE)) {
            Point bottom = side.onAxis(-bike.get(Inputs.HEAD_TUBE));
            length(Inputs.HEAD_TUBE.quantity(), side.onAxis(0), bottom, BESIDE);
        }
        if (bike.has(Inputs.HEAD_TUBE) && bike.has(Inputs.LOWER_STACK)) {
            Point crown = side.onAxis(-bike.get(Inputs.HEAD_TUBE) - bike.get(Inputs.LOWER_STACK));
            length(Measures.AXLE_TO_CROWN_IMPLIED.quantity(), crown, front, BESIDE);
        }
    }

    private void cockpit() {
        geometry.cockpit().ifPresent(cockpit -> {
            length(Inputs.STEM_LENGTH.quantity(), cockpit.stemRoot(), cockpit.clamp(), BESIDE);
            bar(cockpit.clamp());
        });
        geometry.handPoint().ifPresent(hand -> {
            Point at = hand.at();
            length(Measures.HAND_X.quantity(), new Point(0, at.y()), at, BESIDE);
            length(Measures.HAND_Y.quantity(), at, new Point(at.x(), 0), 0);
            Point ahead = new Point(side.sinHead(), side.cosHead()).times(hand.aheadMm());
            length(Measures.HAND_AHEAD.quantity(), at.minus(ahead), at, 0);
        });
    }

    private void bar(Point clamp) {
        if (bike.has(Inputs.BAR_REACH) && bike.has(Inputs.BAR_DROP)) {
            length(Inputs.BAR_REACH.quantity(), clamp, onBar(clamp, new Point(bike.get(Inputs.BAR_REACH), 0)), BESIDE);
            length(
                    Inputs.BAR_DROP.quantity(),
                    clamp,
                    onBar(clamp, new Point(0, -bike.get(Inputs.BAR_DROP))),
                    2 * BESIDE);
        }
    }

    /** A point of the bar, which may be turned in its clamp. */
    private Point onBar(Point clamp, Point point) {
        return clamp.plus(point.turned(Math.toRadians(bike.get(Inputs.BAR_ROTATION))));
    }

    private void contact() {
        if (bike.hasGroup("crank")) {
            length(Inputs.CRANK_LENGTH.quantity(), bb, new Point(bike.get(Inputs.CRANK_LENGTH), 0), -BESIDE);
        }
        geometry.sitPoint().ifPresent(this::saddle);
    }

    private void saddle(Point sit) {
        length(Inputs.CONTACT_SIT_X.quantity(), sit, new Point(0, sit.y()), BESIDE);
        length(Measures.SADDLE_HEIGHT.quantity(), bb, sit, BESIDE);
        geometry.cockpit().ifPresent(cockpit -> {
            Point low = new Point(sit.x(), cockpit.clamp().y());
            length(Measures.SADDLE_TO_BAR.quantity(), sit, low, 0);
            marks.get(Measures.SADDLE_TO_BAR.key()).add(path(Ink.DASHED, low, cockpit.clamp()));
        });
        geometry.handPoint().ifPresent(hand -> {
            Point end = new Point(hand.at().x(), sit.y());
            length(Measures.SADDLE_TO_HAND.quantity(), sit, end, BESIDE);
        });
    }

    private Point onGround(double x) {
        return new Point(x, -side.bbHeightMm());
    }

    private static Point below(Point point, double by) {
        return new Point(point.x(), point.y() - by);
    }

    /** Between two points, to scale: its number is their distance. */
    private void length(Quantity quantity, Point from, Point to, double offset) {
        String words = quantity.formatWithUnit(to.minus(from).length());
        add(quantity, new Dimension(on(from), on(to), offset, words, quantity.key(), Ink.BOLD, 0));
    }

    /** Up from the horizontal behind a point. */
    private void angle(Quantity quantity, Point at, double degrees) {
        List<Drawing.Point> arc = new ArrayList<>();
        for (double up = 0; up <= degrees; up += Math.min(ARC_STEP_DEG, Math.max(0.01, degrees - up))) {
            arc.add(on(round(at, up)));
        }
        add(quantity, new Path(arc, false, false, Ink.BOLD, 0));
        add(quantity, path(Ink.FAINT, at, round(at, 0)));
        Drawing.Point middle = on(round(at, degrees / 2));
        add(quantity, new Label(middle, quantity.formatWithUnit(degrees), Ink.BOLD, 0));
    }

    private static Point round(Point at, double up) {
        double turn = Math.toRadians(up);
        return at.plus(new Point(-Math.cos(turn), Math.sin(turn)).times(ARC));
    }

    private void add(Quantity quantity, Mark mark) {
        marks.computeIfAbsent(quantity.key(), any -> new ArrayList<>()).add(mark);
    }

    private static Path path(Ink ink, Point from, Point to) {
        return new Path(List.of(on(from), on(to)), false, false, ink, 0);
    }

    private static Drawing.Point on(Point point) {
        return new Drawing.Point(point.x(), point.y());
    }
}
