package rakeline.shell;

import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.toRadians;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import rakeline.figure.Chart;
import rakeline.figure.Drawing;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.figure.Drawing.Point;
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Unit;

/** Figures for the window's tests, of a made-up bicycle. */
final class FakeFigures {
    private static final double RADIUS = 339;

    private FakeFigures() {}

    static Chart chart(double head) {
        Quantity x =
                Quantity.of("frame.headAngleDeg", "Head angle", Unit.DEGREE, "").declared();
        Numbers steps = Numbers.generate(101, i -> 69 + i * 0.05);
        return new Chart(
                "Trail, wheelbase and toe room over head angle",
                x,
                steps,
                head,
                List.of(
                        panel("trailMm", "Trail", steps, head, FakeFigures::trail),
                        panel("wheelbaseMm", "Wheelbase", steps, head, angle -> 971 - 7 * (angle - 71.3)),
                        panel("toeRoomMm", "Toe room", steps, head, angle -> -23 - 9 * (angle - 71.3))),
                List.of(),
                "stack, reach, fork offset, crank, shoe (redraw)",
                List.of(new Caution(
                        "toe contact",
                        "Toe contact can throw a rider. A figure is no safety certificate: try it in person, and check"
                                + " the current local standard.")));
    }

    private static double trail(double angle) {
        return (RADIUS * cos(toRadians(angle)) - 47) / sin(toRadians(angle));
    }

    private static Chart.Panel panel(String key, String label, Numbers steps, double here, DoubleUnaryOperator at) {
        return new Chart.Panel(
                Quantity.of(key, label, Unit.MILLIMETRE, "").declared(), steps.map(at), at.applyAsDouble(here));
    }

    static Drawing side(double head) {
        double front = 571 - 8 * (head - 71.3);
        Point rear = new Point(-404, 72);
        Point axle = new Point(front, 72);
        Point top = new Point(370, 508);
        List<Mark> marks = new ArrayList<>();
        marks.add(new Circle(rear, RADIUS, false, Ink.BOLD, 0));
        marks.add(new Circle(axle, RADIUS, false, Ink.BOLD, 0));
        marks.add(line(Ink.BOLD, new Point(0, 0), rear, new Point(-150, 490), new Point(0, 0)));
        marks.add(line(Ink.BOLD, new Point(-140, 460), top, axle));
        marks.add(line(Ink.BOLD, new Point(0, 0), new Point(390, 420)));
        marks.add(line(Ink.FAINT, new Point(-800, 72 - RADIUS), new Point(front + 400, 72 - RADIUS)));
        marks.add(new Dimension(
                new Point(-404, 72 - RADIUS),
                new Point(front, 72 - RADIUS),
                -80,
                "wheelbase 971",
                "wheelbaseMm",
                Ink.FINE,
                0));
        return new Drawing("Side view", "Road XS", marks, List.of(), "", List.of());
    }

    static Drawing plan() {
        List<Mark> marks = List.of(
                line(Ink.BOLD, new Point(0, 20), new Point(670, -120)),
                line(Ink.SOFT, new Point(-150, 115), new Point(105, 115)),
                line(Ink.SOFT, new Point(-150, -115), new Point(105, -115)));
        return new Drawing(
                "Foot and wheel", "Bar turned 15°: shoe and tyre meet from 12° on", marks, List.of(), "", List.of());
    }

    private static Path line(Ink ink, Point... points) {
        return new Path(List.of(points), false, false, ink, 0);
    }
}
