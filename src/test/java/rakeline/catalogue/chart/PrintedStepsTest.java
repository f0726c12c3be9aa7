package rakeline.catalogue.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.study.Reconcile;
import rakeline.study.Vocabulary;

class PrintedStepsTest {
    private static final String HEAD =
            "Size,Stack,Reach,Head angle,Seat angle,Chainstay,BB drop,Rake,Wheelbase,Wheel,Tyre\n";

    /** Head and seat angles as printed; the step that their digits show. */
    @ParameterizedTest
    @CsvSource({
        "72;73;74, 74;73.5;73, 0.5",
        "72.0;73.0;74.5, 74.0;73.5;73.0, 0.5",
        "71.25;72.5;73, 74;73.75;73, 0.25",
        "71.3;72.1;73, 74;73.5;73.2, 0.1",
        "71;72;73, 74;74;74, 1",
        "72.5, 74, 0.5",
        "71.25, 74, 0.25",
        "71.30;72.15;72.85, 74.25;74.20;74.00, 0.05",
    })
    void anglesStepAsTheirDigitsShow(String head, String seat, double step) {
        assertThat(stepDeg(head.split(";", -1), seat.split(";", -1))).isEqualTo(step);
    }

    private static double stepDeg(String[] head, String[] seat) {
        StringBuilder chart = new StringBuilder(HEAD);
        for (int i = 0; i < head.length; i++) {
            chart.append(String.join(
                    ",", "S" + i, "51" + i, "36" + i, head[i], seat[i], "411", "74", "47", "98" + i, "700c", "28\n"));
        }
        return read(chart.toString()).bikes().get(0).get(Inputs.CHARTED_STEP_DEG);
    }

    @Test
    void columnsOfOneChartMayStepDifferently() {
        Bike bike = read("""
                        Size,Stack,Reach,Head angle,Seat angle,Chainstay,BB drop,Rake,Wheelbase,Trail,Wheel,Tyre
                        S,513,366,70.5,74.3,411,74,47,985,62.3,700c,28
                        M,534,374,71.5,73.9,411,74,47,995,58.1,700c,28
                        L,561,383,72,73.6,411,72,47,1000,57.4,700c,28
                        XL,583,391,72.5,73.2,411,72,47,1020,54.6,700c,28
                        """).bikes().get(0);
        assertThat(bike.get(Inputs.CHARTED_STEP_MM)).isEqualTo(1);
        assertThat(stepOf(bike, "frame.headAngleDeg")).isEqualTo(0.5);
        assertThat(stepOf(bike, "charted.wheelbaseMm")).isEqualTo(5);
        assertThat(stepOf(bike, "charted.trailMm")).isEqualTo(0.1);
        assertThat(stepOf(bike, "frame.stackMm")).isEqualTo(1);
        assertThat(stepOf(bike, "frame.seatAngleDeg")).isEqualTo(0.1);
    }

    private static double stepOf(Bike bike, String key) {
        double own = bike.provenance().get(key).step();
        boolean angle = key.endsWith("Deg");
        return Double.isNaN(own) ? bike.get(angle ? Inputs.CHARTED_STEP_DEG : Inputs.CHARTED_STEP_MM) : own;
    }

    @Test
    void aStepThatIsGivenStands() {
        Bike bike = ChartFile.read(
                        (HEAD + "S,513,366,70.5,74.5,411,74,47,985,700c,28\n").getBytes(StandardCharsets.UTF_8),
                        "chart.csv",
                        new ChartImport.Wanted("chart", "", Map.of(Inputs.CHARTED_STEP_DEG, 0.2)))
                .bikes()
                .get(0);
        assertThat(bike.get(Inputs.CHARTED_STEP_DEG)).isEqualTo(0.2);
    }

    static List<Printing> printings() {
        List<Printing> all = new ArrayList<>();
        for (int seed = 0; seed < 300; seed++) {
            all.add(new Printing(new Random(seed)));
        }
        return all;
    }

    /**
     * Charts of invented frames, every number rounded to the step of its column and printed with or without the zeros at
     * its end: none contradicts itself.
     */
    @Tag("slow")
    @ParameterizedTest
    @MethodSource("printings")
    void aCleanChartAgreesWhateverItsSteps(Printing printing) {
        ChartImport chart = read(printing.csv());
        assertThat(chart.doubts()).isEmpty();
        assertThat(chart.bikes())
                .allSatisfy(bike -> assertThat(Reconcile.residuals(Vocabulary.standard(), bike))
                        .as(printing.csv())
                        .hasSizeGreaterThan(4)
                        .allMatch(residual -> residual.isWithin()));
    }

    private static ChartImport read(String csv) {
        return ChartFile.read(
                csv.getBytes(StandardCharsets.UTF_8), "chart.csv", new ChartImport.Wanted("chart", "", Map.of()));
    }

    /** How one chart is printed, and what it prints. */
    static final class Printing {
        private static final String[][] LENGTHS = {
            {"mm", "1", "1"},
            {"mm", "1", "5"},
            {"mm", "1", "0.5"},
            {"cm", "10", "0.1"},
            {"cm", "10", "0.5"},
            {"in", "25.4", "0.1"},
            {"in", "25.4", "0.25"},
            {"in", "25.4", "0.125"},
            {"in", "25.4", "0.5"}
        };
        private static final String[] ANGLES = {"0.1", "0.5", "0.25", "1"};

        private final Random random;
        private final String[] length;
        private final BigDecimal angle;
        private final boolean zeros;

        Printing(Random random) {
            this.random = random;
            length = LENGTHS[random.nextInt(LENGTHS.length)];
            angle = new BigDecimal(ANGLES[random.nextInt(ANGLES.length)]);
            zeros = random.nextBoolean();
        }

        String csv() {
            int sizes = 3 + random.nextInt(4);
            StringBuilder csv =
                    new StringBuilder("Size,Stack,Reach,HTA,STA,CS length,BB drop,Rake,Wheelbase,Front centre,"
                            + "Trail,ETT,BB height,Wheel,Tyre\n,UNIT,UNIT,°,°,UNIT,UNIT,UNIT,UNIT,UNIT,UNIT,UNIT,UNIT,,\n"
                                    .replace("UNIT", length[0]));
            for (int i = 0; i < sizes; i++) {
                csv.append(size(i)).append('\n');
            }
            return csv.toString();
        }

        /** Formulas of the side view written out once more, so that the chart does not come from what reads it. */
        private String size(int i) {
            double stack = 500 + 21 * i + 9 * random.nextDouble();
            double reach = 360 + 9 * i + 6 * random.nextDouble();
            double head = 69 + random.nextDouble() * 5;
            double seat = 72 + random.nextDouble() * 3;
            double stay = 405 + random.nextDouble() * 20;
            double drop = 60 + random.nextDouble() * 20;
            double offset = 41 + random.nextDouble() * 12;
            double radius = 339;
            double sin = Math.sin(Math.toRadians(head));
            double cos = Math.cos(Math.toRadians(head));
            double frontX = reach + (stack - drop) * cos / sin + offset / sin;
            double topTube = reach + stack / Math.tan(Math.toRadians(seat));
            String angles = print(head, angle) + "," + print(seat, angle);
            return "S" + i + "," + lengths(stack, reach) + "," + angles + ","
                    + lengths(
                            stay,
                            drop,
                            offset,
                            frontX + Math.sqrt(stay * stay - drop * drop),
                            Math.hypot(frontX, drop),
                            (radius * cos - offset) / sin,
                            topTube,
                            radius - drop)
                    + ",700c,28";
        }

        private String lengths(double... millimetres) {
            return Arrays.stream(millimetres)
                    .mapToObj(value -> print(value / Double.parseDouble(length[1]), new BigDecimal(length[2])))
                    .collect(Collectors.joining(","));
        }

        private String print(double value, BigDecimal step) {
            BigDecimal steps = BigDecimal.valueOf(value).divide(step, 0, RoundingMode.HALF_EVEN);
            BigDecimal rounded = steps.multiply(step);
            return zeros
                    ? rounded.toPlainString()
                    : rounded.stripTrailingZeros().toPlainString();
        }

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%s by %s, angles by %s", length[0], length[2], angle);
        }
    }
}
