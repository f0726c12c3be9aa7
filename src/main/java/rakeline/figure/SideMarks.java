package rakeline.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.geometry.SaddlePosition;
import rakeline.geometry.SeatAxis;
import rakeline.geometry.SideView;

/** The marks of a side view. Tubes that the file does not give are drawn where such tubes usually are. */
final class SideMarks {
    private static final double USUAL_HEAD_TUBE = 0.2;
    private static final double USUAL_JUNCTION = 35;
    private static final double SADDLE_LENGTH = 260;

    private final Geometry geometry;
    private final Bike bike;
    private final SideView side;
    private final SeatAxis seat;
    private final int overlay;
    private final List<Mark> marks = new ArrayList<>();

    private SideMarks(Geometry geometry, int overlay) {
        this.geometry = geometry;
        this.bike = geometry.bike();
        this.side = geometry.side();
        this.seat = SeatAxis.of(bike);
        this.overlay = overlay;
    }

    static List<Mark> of(Geometry geometry, int overlay) {
        SideMarks side = new SideMarks(geometry, overlay);
        side.ground();
        side.wheels();
        side.frame();
        side.fork();
        side.cockpit();
        geometry.sitPoint().ifPresent(side::saddle);
        side.crank();
        return List.copyOf(side.marks);
    }

    private double groundY() {
        return -side.bbHeightMm();
    }

    private void ground() {
        double margin = 60;
        line(
                Ink.FAINT,
                new Point(side.rearAxleXMm() - bike.get(Inputs.REAR_RADIUS) - margin, groundY()),
                new Point(side.frontAxleXMm() + side.frontRadiusMm() + margin, groundY()));
    }

    private void wheels() {
        wheel(side.rearAxle(), bike.get(Inputs.REAR_RADIUS), bike.get(Inputs.REAR_TYRE));
        wheel(side.frontAxle(), side.frontRadiusMm(), bike.get(Inputs.FRONT_TYRE));
        if (bike.has(Inputs.MUDGUARD_GAP)) {
            mudguard(side.frontRadiusMm() + bike.get(Inputs.MUDGUARD_GAP));
        }
    }

    private void wheel(Point axle, double radius, double tyre) {
        circle(Ink.BOLD, axle, radius);
        circle(Ink.FAINT, axle, radius - tyre);
        circle(Ink.FINE, axle, 12);
    }

    /** From ahead of the fork over the top and down behind. */
    private void mudguard(double radius) {
        List<Point> arc = new ArrayList<>();
        for (int degree = 60; degree <= 215; degree += 5) {
            double round = Math.toRadians(degree);
            arc.add(side.frontAxle().plus(new Point(radius * Math.cos(round), radius * Math.sin(round))));
        }
        path(Ink.FINE, false, arc);
    }

    private void frame() {
        Point bb = new Point(0, 0);
        Point seatJunction = geometry.topTube().map(tube -> tube.atSeat()).orElseGet(this::usualSeatJunction);
        Point headJunction = geometry.topTube().map(tube -> tube.atHead()).orElse(side.onAxis(-USUAL_JUNCTION));
        Point headBottom = side.onAxis(-headTube());
        line(Ink.BOLD, bb, side.onAxis(-headTube() + USUAL_JUNCTION));
        line(Ink.BOLD, headJunction, seatJunction);
        line(Ink.BOLD, bb, seatTubeTop(seatJunction));
        line(Ink.BOLD, bb, side.rearAxle());
        line(Ink.BOLD, side.rearAxle(), seatJunction);
        line(Ink.BOLD, side.onAxis(0), headBottom);
        circle(Ink.BOLD, bb, 20);
    }

    private double headTube() {
        return bike.has(Inputs.HEAD_TUBE) ? bike.get(Inputs.HEAD_TUBE) : USUAL_HEAD_TUBE * side.stackMm();
    }

    private Point usualSeatJunction() {
        return seat.at(seat.alongAtHeight(side.stackMm() - 2 * USUAL_JUNCTION));
    }

    private Point seatTubeTop(Point seatJunction) {
        return bike.has(Inputs.SEAT_TUBE) ? seat.at(bike.get(Inputs.SEAT_TUBE)) : seatJunction;
    }

    private void fork() {
        double lower = bike.has(Inputs.LOWER_STACK) ? bike.get(Inputs.LOWER_STACK) : 0;
        Point crown = side.onAxis(-headTube() - lower);
        line(Ink.BOLD, side.onAxis(-headTube()), crown);
        line(Ink.BOLD, crown, side.frontAxle());
        line(Ink.DASHED, side.onAxis(90), new Point(axisOnGround(), groundY()));
        touches();
    }

    /** Where the front tyre stands, and where the steering axis meets the ground. */
    private void touches() {
        marks.add(new Circle(on(new Point(side.frontAxleXMm(), groundY())), 7, true, Ink.FINE, overlay));
        marks.add(new Circle(on(new Point(axisOnGround(), groundY())), 7, false, Ink.FINE, overlay));
    }

    private double axisOnGround() {
        return side.frontAxleXMm() + side.trailMm();
    }

    private void cockpit() {
        geometry.cockpit().ifPresent(cockpit -> {
            line(Ink.FINE, side.onAxis(0), cockpit.stemRoot());
            line(Ink.BOLD, cockpit.stemRoot(), cockpit.clamp());
            circle(Ink.FINE, cockpit.clamp(), 16);
            geometry.handPoint().ifPresent(hand -> line(Ink.BOLD, cockpit.clamp(), hand.at()));
            drops(cockpit.clamp());
        });
    }

    /** A drop bar's bend, as a half circle between the heights of clamp and drops. */
    private void drops(Point clamp) {
        if (!bike.has(Inputs.BAR_REACH) || !bike.has(Inputs.BAR_DROP)) {
            return;
        }
        double radius = bike.get(Inputs.BAR_DROP) / 2;
        double straight = Math.max(0, bike.get(Inputs.BAR_REACH) - radius);
        List<Point> bend = new ArrayList<>(List.of(clamp));
        for (int degree = 90; degree >= -90; degree -= 10) {
            double round = Math.toRadians(degree);
            bend.add(onBar(clamp, new Point(straight + radius * Math.cos(round), -radius + radius * Math.sin(round))));
        }
        bend.add(onBar(clamp, new Point(-10, -2 * radius)));
        path(Ink.FINE, false, bend);
    }

    /** A point of the bar, which may be turned in its clamp. */
    private Point onBar(Point clamp, Point point) {
        return clamp.plus(point.turned(Math.toRadians(bike.get(Inputs.BAR_ROTATION))));
    }

    private void saddle(Point sit) {
        Point nose = sit.plus(new Point(0.55 * SADDLE_LENGTH, -6));
        Point tail = sit.plus(new Point(-0.45 * SADDLE_LENGTH, 4));
        path(Ink.BOLD, false, List.of(tail, sit, nose));
        Point clampFoot = geometry.saddlePosition()
                .map(SaddlePosition::clampFoot)
                .orElseGet(() -> seat.at(seat.alongAtHeight(sit.y() - 45)));
        line(Ink.BOLD, clampFoot, seatTubeTop(usualSeatJunction()));
        rails(clampFoot, sit);
    }

    /** From the post's head back along its setback, and up to the saddle. */
    private void rails(Point clampFoot, Point sit) {
        double setback = bike.has(Inputs.POST_SETBACK) ? bike.get(Inputs.POST_SETBACK) : 0;
        Point clamp = clampFoot.plus(seat.rearward().times(setback));
        path(Ink.FINE, false, List.of(clampFoot, clamp));
        path(
                Ink.FINE,
                false,
                List.of(new Point(clamp.x() - 45, sit.y() - 8), clamp, new Point(clamp.x() + 60, sit.y() - 8)));
    }

    private void crank() {
        if (!bike.hasGroup("crank")) {
            return;
        }
        Point pedal = new Point(bike.get(Inputs.CRANK_LENGTH), 0);
        line(Ink.SOFT, new Point(0, 0), pedal);
        double half = bike.get(Inputs.PEDAL_HALF_THICKNESS);
        path(
                Ink.SOFT,
                true,
                List.of(
                        pedal.plus(new Point(-40, half)),
                        pedal.plus(new Point(40, half)),
                        pedal.plus(new Point(40, -half)),
                        pedal.plus(new Point(-40, -half))));
        if (bike.hasGroup("shoe")) {
            shoe(pedal);
        }
    }

    private void shoe(Point pedal) {
        double pitch = -Math.toRadians(bike.get(Inputs.SHOE_PITCH));
        double toe = bike.get(Inputs.TOE_FORWARD);
        double height = bike.get(Inputs.TOE_HEIGHT);
        double radius = bike.get(Inputs.TOE_RADIUS);
        List<Point> outline =
                new ArrayList<>(List.of(new Point(-150, height - radius), new Point(-150, height + radius)));
        for (int degree = 90; degree >= -90; degree -= 15) {
            double round = Math.toRadians(degree);
            outline.add(new Point(toe - radius + radius * Math.cos(round), height + radius * Math.sin(round)));
        }
        path(
                Ink.SOFT,
                true,
                outline.stream().map(point -> point.turned(pitch).plus(pedal)).toList());
    }

    private void line(Ink ink, Point from, Point to) {
        path(ink, false, Arrays.asList(from, to));
    }

    private void path(Ink ink, boolean closed, List<Point> points) {
        marks.add(new Path(points.stream().map(SideMarks::on).toList(), closed, false, ink, overlay));
    }

    private void circle(Ink ink, Point centre, double radius) {
        marks.add(new Circle(on(centre), radius, false, ink, overlay));
    }

    private static Drawing.Point on(Point point) {
        return new Drawing.Point(point.x(), point.y());
    }
}
