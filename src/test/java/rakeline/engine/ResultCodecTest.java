package rakeline.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.figure.Basis;
import rakeline.figure.Chart;
import rakeline.figure.Column;
import rakeline.figure.Drawing;
import rakeline.figure.MapFigure;
import rakeline.figure.Table;
import rakeline.quantity.Caution;
import rakeline.quantity.Limit;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Range;
import rakeline.quantity.SourceNote;
import rakeline.quantity.SourceStanding;
import rakeline.quantity.Unit;

class ResultCodecTest {
    private static final Quantity TRAIL = new Quantity(
            "trailMm",
            "Trail",
            "t",
            Unit.MILLIMETRE,
            Range.ANY,
            1,
            0.5,
            "Ground to steering axis.",
            List.of(new Caution("look", "Look out."), new Caution("seen", "Seen before.", true)),
            List.of(new Limit(45, "low", "Source A"), new Limit(75, "high", "").asRule()),
            List.of(new SourceNote(SourceNote.Part.FORMULA, SourceStanding.COPY, "Somewhere 1999")));
    private static final Quantity HEAD = new Quantity(
            "headAngleDeg",
            "Head angle",
            "",
            Unit.DEGREE,
            new Range(60, 80),
            2,
            Double.NaN,
            "Ünï → °",
            List.of(),
            List.of(),
            List.of());

    static List<Result> results() {
        Chart chart = new Chart(
                "Trail",
                HEAD,
                Numbers.of(69, 70, 71),
                70.5,
                List.of(new Chart.Panel(TRAIL, Numbers.of(1, Double.NaN, -0.0), Double.NaN)),
                List.of(new Chart.Gap(1, "trailMm", "no such fork")),
                "fork",
                List.of(new Caution("word", "Caution.")),
                new Basis(
                        List.of(new Basis.Subject(
                                "As the dials stand",
                                "XS",
                                "Someone",
                                "hoods",
                                "the shoe of Someone",
                                Map.of("crank.lengthMm", 165.0))),
                        true));
        Table table = new Table(
                "Bikes",
                List.of(Column.ofWords("name", "Bike", List.of("é", "")), Column.of(TRAIL, Numbers.of(1.5, 2.5))),
                "",
                List.of());
        Drawing.Point p = new Drawing.Point(1, 2);
        Drawing drawing = new Drawing(
                "Side view",
                "XS",
                List.of(
                        new Drawing.Path(List.of(p, p, p), true, false, Drawing.Ink.BOLD, 0),
                        new Drawing.Circle(p, 311, true, Drawing.Ink.SOFT, 1),
                        new Drawing.Dimension(p, p, 20, "58", "trailMm", Drawing.Ink.FINE, 0),
                        new Drawing.Label(p, "BB", Drawing.Ink.DASHED, 2)),
                List.of(Column.of(HEAD, Numbers.of(71.3))),
                "held",
                List.of(new Caution("a", "b", true)));
        return List.of(
                new Result.Shown(chart),
                new Result.Shown(table),
                new Result.Shown(drawing),
                new Result.Shown(map()),
                Result.Value.of("71.3", 71.3),
                new Result.Value("a bike", Double.NaN, List.of(drawing)),
                new Result.Text("zwei\nZeilen"));
    }

    private static MapFigure map() {
        return new MapFigure(
                "Trail",
                new MapFigure.Axis(HEAD, Numbers.of(69, 70, 71), 70.5),
                new MapFigure.Axis(TRAIL, Numbers.of(50, 40), Double.NaN),
                TRAIL,
                Numbers.of(1, 2, Double.NaN, 4, -0.0, 6),
                Double.NaN,
                List.of("No value in 1 of 6 places: no such fork."),
                "fork",
                List.of(new Caution("word", "Caution.")));
    }

    private static byte[] written(Result result) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ResultCodec.write(new Packer(new DataOutputStream(bytes)), result);
        return bytes.toByteArray();
    }

    private static Result read(byte[] bytes) throws IOException {
        return ResultCodec.read(new Unpacker(new DataInputStream(new ByteArrayInputStream(bytes))));
    }

    @ParameterizedTest
    @MethodSource("results")
    void aResultIsReadAsItWasWritten(Result result) throws IOException {
        assertThat(read(written(result))).isEqualTo(result);
    }

    @ParameterizedTest
    @MethodSource("results")
    void aResultCutShortIsRefused(Result result) throws IOException {
        byte[] bytes = written(result);
        assertThatThrownBy(() -> read(Arrays.copyOf(bytes, bytes.length - 1)))
                .isInstanceOfAny(IOException.class, IllegalArgumentException.class);
    }

    @ParameterizedTest
    @MethodSource("results")
    void bytesGoneWrongAreReadOrRefusedButNeverTakeMemoryThatIsNotThere(Result result) throws IOException {
        Random random = new Random(5);
        for (int i = 0; i < 500; i++) {
            byte[] bytes = written(result);
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
            assertReadOrRefused(bytes);
        }
    }

    private static void assertReadOrRefused(byte[] bytes) {
        try {
            assertThat(read(bytes)).isNotNull();
        } catch (IOException | IllegalArgumentException e) {
            assertThat(e).isNotNull();
        }
    }

    @Test
    void aLengthBeyondTheDataIsRefused() {
        byte[] bytes = {0, 0, 0, 5, 0x7f, (byte) 0xff, (byte) 0xff, (byte) 0xff};
        assertThatThrownBy(() -> read(bytes)).isInstanceOf(IOException.class).hasMessageContaining("2147483647");
    }

    @Test
    void aChartsNumbersAreItsStepsAndPanels() {
        assertThat(ResultCodec.numbers(((Result.Shown) results().get(0)).figure()))
                .isEqualTo(6);
    }
}
