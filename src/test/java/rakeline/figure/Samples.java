package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import rakeline.figure.Chart.Gap;
import rakeline.figure.Chart.Panel;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Label;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.figure.Drawing.Point;
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Unit;

/** Figures as a page would have them, about one small road bike; the arithmetic is the side view's own. */
public final class Samples {
    public static final String CAUTION =
            "Toe contact can throw a rider. A figure is no safety certificate: try it in person, and check the current local standard.";
    private static final List<Caution> CAUTIONS = List.of(new Caution("toe contact", CAUTION));
    public static final String HELD = "stack 508, reach 370, fork offset 47, chainstay 410, crank 165 and the shoe";

    public static final Quantity HEAD_ANGLE = Quantity.of(
                    "frame.headAngleDeg", "Head angle", Unit.DEGREE, "steering axis to the ground")
            .declared();
    public static final Quantity TRAIL =
            Quantity.of("trailMm", "Trail", Unit.MILLIMETRE, "along the ground").declared();
    public static final Quantity WHEELBASE = Quantity.of("wheelbaseMm", "Wheelbase", Unit.MILLIMETRE, "axle to axle")
            .declared();
    public static final Quantity TOE_ROOM = Quantity.of("toeRoomMm", "Toe room", Unit.MILLIMETRE, "to spare")
            .limit(0, "touching from here down", "definition of toe room")
            .declared();
    public static final Quantity FLOP = Quantity.of("wheelFlopMm", "Wheel flop", Unit.MILLIMETRE, "of the front end")
            .declared();
    public static final Quantity OFFSET = Quantity.of("fork.offsetMm", "Fork offset", Unit.MILLIMETRE, "axis to axle")
            .declared();
    public static final Quantity LONG_NAME = Quantity.of(
                    "pedalToTyreLevelMm",
                    "Pedal to tyre with the crank pointing straight forward",
                    Unit.MILLIMETRE,
                    "level")
            .declared();

    private static final double RADIUS = 339;

    private Samples() {}

    /** Trail with limits still to be declared. */
    public static Quantity.Draft limitedTrail() {
        return Quantity.of("trailMm", "Trail", Unit.MILLIMETRE, "along the ground");
    }

    public static double trail(double headDeg, double offset) {
        double head = Math.toRadians(headDeg);
        return (RADIUS * Math.cos(head) - offset) / Math.sin(head);
    }

    public static double wheelbase(double headDeg) {
        double head = Math.toRadians(headDeg);
        return 404 + 370 + 508 / Math.tan(head) + 47 / Math.sin(head) - (RADIUS - 269) / Math.tan(head) + 20;
    }

    private static double toeRoom(double headDeg) {
        return wheelbase(headDeg) - wheelbase(71.3) - 3.4;
    }

    /** Head angle over 69 to 74 degrees with one panel for each quantity. */
    public static Chart sweep(int size, List<Quantity> quantities) {
        Numbers steps = Numbers.generate(size, i -> 69 + 5.0 * i / Math.max(1, size - 1));
        List<Panel> panels = quantities.stream()
                .map(quantity -> new Panel(
                        quantity,
                        steps.map(formula(quantity)),
                        formula(quantity).applyAsDouble(71.3)))
                .toList();
        return new Chart(
                "Road XS: what the head angle moves", HEAD_ANGLE, steps, 71.3, panels, List.of(), HELD, CAUTIONS);
    }

    private static DoubleUnaryOperator formula(Quantity quantity) {
        return switch (quantity.key()) {
            case "trailMm" -> head -> trail(head, 47);
            case "wheelbaseMm" -> Samples::wheelbase;
            case "toeRoomMm" -> Samples::toeRoom;
            case "wheelFlopMm" ->
                head -> trail(head, 47) * Math.sin(Math.toRadians(head)) * Math.cos(Math.toRadians(head));
            default -> head -> toeRoom(head) + 110;
        };
    }

    /** Trail, wheelbase and toe room over 201 steps. */
    public static Chart sweep() {
        return sweep(201, List.of(TRAIL, WHEELBASE, TOE_ROOM));
    }

    /** Trail held at 58 by the fork's offset, which the steep end cannot reach. */
    public static Chart held() {
        Numbers steps = Numbers.generate(101, i -> 69 + 0.05 * i);
        Numbers offsets = steps.map(Samples::offsetForTrail);
        Numbers trails = Numbers.generate(101, i -> trail(steps.at(i), offsets.at(i)));
        Numbers room = Numbers.generate(101, i -> offsets.at(i) + toeRoom(steps.at(i)) - 47);
        return new Chart(
                "Road XS: trail held at 58 mm by the fork's offset",
                HEAD_ANGLE,
                steps,
                71.3,
                List.of(
                        new Panel(TRAIL, trails, 58),
                        new Panel(OFFSET, offsets, offsetForTrail(71.3)),
                        new Panel(TOE_ROOM, room, offsetForTrail(71.3) + toeRoom(71.3) - 47)),
                gaps(offsets, List.of("trailMm", "fork.offsetMm", "toeRoomMm")),
                "trail at 58 mm by fork offset; all other inputs as the bike has them",
                CAUTIONS);
    }

    private static double offsetForTrail(double headDeg) {
        double head = Math.toRadians(headDeg);
        double offset = RADIUS * Math.cos(head) - 58 * Math.sin(head);
        return offset < 42 ? Double.NaN : offset;
    }

    private static List<Gap> gaps(Numbers values, List<String> keys) {
        return IntStream.range(0, values.size())
                .filter(i -> Double.isNaN(values.at(i)))
                .boxed()
                .flatMap(i -> keys.stream()
                        .map(key -> new Gap(i, key, "no fork offset within 42..60 gives a trail of 58 mm")))
                .toList();
    }

    /** Thirty bikes of five measures. */
    public static Table table() {
        return table(30);
    }

    public static Table table(int rows) {
        List<String> names = IntStream.range(0, rows)
                .mapToObj(i -> String.format(Locale.ROOT, "Frame %02d, %d mm fork", i + 1, 41 + i % 9))
                .toList();
        Numbers heads = Numbers.generate(rows, i -> 69 + 5.0 * i / Math.max(1, rows - 1));
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofWords("bike", "Bike", names));
        columns.add(Column.of(HEAD_ANGLE, heads));
        columns.add(Column.of(TRAIL, heads.map(head -> trail(head, 47))));
        columns.add(Column.of(WHEELBASE, heads.map(Samples::wheelbase)));
        columns.add(Column.of(TOE_ROOM, heads.map(head -> head > 72.5 ? Double.NaN : toeRoom(head))));
        columns.add(Column.of(LONG_NAME, heads.map(head -> toeRoom(head) + 110)));
        return new Table("Sizes side by side", columns, "wheels, fork and shoe", CAUTIONS);
    }

    /** The side view of a small bike with its dimensions, and another front wheel laid over it. */
    public static Drawing sideView() {
        List<Mark> marks = new ArrayList<>();
        Point rear = new Point(-403, 74);
        Point front = new Point(568, 74);
        Point bracket = new Point(0, 0);
        Point headTop = new Point(370, 508);
        Point headFoot = new Point(404, 408);
        Point seatTop = new Point(-120, 420);
        Point saddle = new Point(-172, 640);
        double ground = 74 - RADIUS;
        marks.add(line(Ink.FAINT, new Point(-790, ground), new Point(960, ground)));
        marks.add(new Circle(rear, RADIUS, false, Ink.BOLD, 0));
        marks.add(new Circle(front, RADIUS, false, Ink.BOLD, 0));
        marks.add(new Circle(rear, 311, false, Ink.FAINT, 0));
        marks.add(new Circle(front, 311, false, Ink.FAINT, 0));
        marks.add(new Circle(new Point(548, 74), RADIUS, false, Ink.FINE, 1));
        marks.add(line(Ink.BOLD, rear, bracket, headFoot, headTop, seatTop, bracket));
        marks.add(line(Ink.BOLD, rear, seatTop));
        marks.add(line(Ink.BOLD, headFoot, new Point(470, 250), front));
        marks.add(line(Ink.FINE, seatTop, saddle));
        marks.add(line(Ink.BOLD, new Point(-300, 650), new Point(-30, 640)));
        marks.add(line(Ink.FINE, headTop, new Point(352, 560), new Point(450, 590), new Point(560, 600)));
        marks.add(line(Ink.DASHED, new Point(340, 640), new Point(630, ground)));
        marks.add(line(Ink.FINE, bracket, new Point(165, 0)));
        marks.add(new Path(
                List.of(new Point(90, 5), new Point(280, 5), new Point(280, 50), new Point(110, 60)),
                true,
                true,
                Ink.SOFT,
                0));
        marks.add(dimension(new Point(-403, ground), new Point(568, ground), -130, "wheelbase 971", "wheelbaseMm"));
        marks.add(dimension(new Point(568, ground), new Point(633, ground), -60, "trail 65", "trailMm"));
        marks.add(dimension(bracket, new Point(0, 508), 620, "stack 508", "frame.stackMm"));
        marks.add(dimension(new Point(0, 508), headTop, 230, "reach 370", "frame.reachMm"));
        marks.add(dimension(bracket, front, -40, "front-centre 573", "frontCentreMm"));
        marks.add(new Label(new Point(700, 420), "head angle 71.3°", Ink.SOFT, 0));
        return new Drawing(
                "Side view", "Road XS", marks, sweep(3, List.of(TRAIL)).columns(), "", List.of());
    }

    private static Path line(Ink ink, Point... points) {
        return new Path(List.of(points), false, false, ink, 0);
    }

    private static Dimension dimension(Point from, Point to, double offset, String text, String key) {
        return new Dimension(from, to, offset, text, key, Ink.FINE, 0);
    }

    /** Trail over head angle and offset; without a value above an offset of {@code mostOffset}. */
    public static MapFigure map(Quantity measure, int columns, int rows, double mostOffset) {
        Numbers heads = Numbers.generate(columns, i -> 69 + 5.0 * i / (columns - 1));
        Numbers offsets = Numbers.generate(rows, j -> 40 + 15.0 * j / (rows - 1));
        Numbers values = Numbers.generate(
                columns * rows,
                i -> offsets.at(i % rows) > mostOffset ? Double.NaN : trail(heads.at(i / rows), offsets.at(i % rows)));
        return new MapFigure(
                "Road XS: trail over head angle 69 to 74° and fork offset 40 to 55 mm, redrawn",
                new MapFigure.Axis(HEAD_ANGLE, heads, 71.3),
                new MapFigure.Axis(OFFSET, offsets, 47),
                measure,
                values,
                trail(71.3, 47),
                mostOffset < 55 ? List.of("No value in some places: no such fork.") : List.of(),
                HELD,
                CAUTIONS);
    }
}
