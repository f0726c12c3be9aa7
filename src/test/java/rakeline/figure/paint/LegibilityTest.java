package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.figure.Chart;
import rakeline.figure.Chart.Panel;
import rakeline.figure.Drawing;
import rakeline.figure.Figure;
import rakeline.figure.Samples;
import rakeline.figure.Table;
import rakeline.figure.paint.TextRecorder.Text;
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Unit;

/** Whatever a figure holds and however wide it is: no text meets another, nothing leaves the area. */
class LegibilityTest {
    private static final List<Integer> WIDTHS = List.of(380, 420, 521, 760, 1100, 1400, 1800);

    static Stream<Arguments> figuresAndWidths() {
        return figures().flatMap(figure -> WIDTHS.stream().map(width -> Arguments.of(figure, width)));
    }

    static Stream<Figure> figures() {
        List<Quantity> all =
                List.of(Samples.LONG_NAME, Samples.TRAIL, Samples.FLOP, Samples.WHEELBASE, Samples.TOE_ROOM);
        Stream<Figure> swept =
                IntStream.rangeClosed(1, 5).mapToObj(panels -> Samples.sweep(201, all.subList(0, panels)));
        Stream<Figure> others = Stream.of(
                Samples.held(),
                Samples.table(),
                Samples.sideView(),
                constant(58),
                constant(Double.NaN),
                manyLimits(),
                Samples.sweep(1, List.of(Samples.TRAIL)),
                Samples.sweep(0, List.of(Samples.TRAIL)),
                Samples.sweep(11, List.of()),
                longWords(),
                Samples.map(Samples.TRAIL, 61, 61, 55),
                Samples.map(Samples.LONG_NAME, 2, 3, 55),
                Samples.map(crowdedTrail(), 9, 31, 50),
                Samples.map(Samples.TRAIL, 5, 5, 0),
                new Table("No columns", List.of(), "", List.of()),
                new Drawing("", "", List.of(), List.of(), "", List.of()));
        return Stream.of(swept, others, wild()).flatMap(figures -> figures);
    }

    private static Chart constant(double value) {
        Numbers steps = Numbers.generate(11, i -> 70 + i);
        return new Chart(
                "All the same",
                Samples.HEAD_ANGLE,
                steps,
                75,
                List.of(new Panel(Samples.TRAIL, steps.map(step -> value), value)),
                List.of(),
                "",
                List.of());
    }

    private static Chart manyLimits() {
        return Samples.sweep(101, List.of(crowdedTrail(), Samples.TOE_ROOM));
    }

    private static Quantity crowdedTrail() {
        return Samples.limitedTrail()
                .limit(60, "first limit", "a rather long name of a source, section 4, table 12, 2019 edition")
                .limit(61, "second limit", "another source with a long name that goes on and on, 1998")
                .limit(61.5, "third limit", "a third")
                .limit(75, "fourth limit", "")
                .declared();
    }

    private static Chart longWords() {
        Chart chart = Samples.sweep();
        String endless = "Donaudampfschifffahrtsgesellschaftskapitän".repeat(6);
        return new Chart(
                endless,
                chart.x(),
                chart.steps(),
                69,
                chart.panels(),
                chart.gaps(),
                endless + " " + chart.held().repeat(5),
                Stream.of(endless, "הפדל נוגע בגלגל ".repeat(9), "踏板碰到车轮".repeat(20))
                        .map(words -> new Caution("long", words))
                        .toList());
    }

    /** Seeded charts of any range, size and place of gaps. */
    private static Stream<Figure> wild() {
        return IntStream.range(0, 20).mapToObj(seed -> wild(new Random(seed)));
    }

    private static Chart wild(Random random) {
        Numbers steps = Numbers.generate(2 + random.nextInt(60), i -> i / 7.0);
        List<Panel> panels = new ArrayList<>();
        double size = Math.pow(10, random.nextInt(9) - 3);
        for (Quantity quantity : List.of(Samples.TRAIL, Samples.LONG_NAME, angle())) {
            Numbers values =
                    steps.map(step -> random.nextInt(6) == 0 ? Double.NaN : size * (random.nextGaussian() + step));
            panels.add(new Panel(quantity, values, values.at(0)));
        }
        double here = steps.at(random.nextInt(steps.size()));
        return new Chart("Seeded", Samples.OFFSET, steps, here, panels, List.of(), "nothing", List.of());
    }

    private static Quantity angle() {
        return Quantity.of("groundSteerDeg", "Steering at the ground", Unit.DEGREE, "at the ground")
                .decimals(2)
                .limit(1, "one", "a source")
                .declared();
    }

    private static TextRecorder drawn(Figure figure, double width, double height, double scale) {
        TextRecorder recorder = new TextRecorder();
        FigurePainter.of(figure, Palette.LIGHT, scale).draw(recorder, new Rectangle2D.Double(0, 0, width, height));
        return recorder;
    }

    private static TextRecorder drawn(Figure figure, int width) {
        Dimension size = FigurePainter.of(figure, Palette.LIGHT, 1).preferredSize(width);
        return drawn(figure, size.width, size.height, 1);
    }

    @ParameterizedTest
    @MethodSource("figuresAndWidths")
    void noTextMeetsAnother(Figure figure, int width) {
        List<Text> texts = drawn(figure, width).texts();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(texts.get(i).box().intersects(texts.get(j).box()))
                        .as("%s over %s", texts.get(i), texts.get(j))
                        .isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("figuresAndWidths")
    void nothingLeavesTheArea(Figure figure, int width) {
        Dimension size = FigurePainter.of(figure, Palette.LIGHT, 1).preferredSize(width);
        Rectangle2D area = new Rectangle2D.Double(-0.5, -0.5, size.width + 1, size.height + 1);
        TextRecorder recorder = drawn(figure, width);
        assertThat(recorder.texts()).allMatch(text -> area.contains(text.box()));
        assertThat(recorder.shapes()).allMatch(area::contains);
    }

    @ParameterizedTest
    @MethodSource("figures")
    void anAreaTooSmallShrinksTheWhole(Figure figure) {
        Rectangle2D area = new Rectangle2D.Double(-0.5, -0.5, 301, 201);
        TextRecorder recorder = drawn(figure, 300, 200, 1);
        assertThat(recorder.texts()).allMatch(text -> area.contains(text.box()));
    }

    @ParameterizedTest
    @MethodSource("figures")
    void textIsNeverMirroredOrTurned(Figure figure) {
        assertThat(drawn(figure, 760).texts()).allMatch(Text::isUpright);
    }

    @ParameterizedTest
    @MethodSource("figures")
    void aLargeAreaAtALargeScaleKeepsTextApartToo(Figure figure) {
        List<Text> texts = drawn(figure, 1800, 1000, 2).texts();
        for (int i = 1; i < texts.size(); i++) {
            Rectangle2D box = texts.get(i).box();
            assertThat(texts.subList(0, i)).noneMatch(other -> other.box().intersects(box));
        }
    }
}
