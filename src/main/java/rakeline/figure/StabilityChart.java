package rakeline.figure;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rakeline.handling.HandlingMeasures;
import rakeline.handling.Modes;
import rakeline.handling.Root;
import rakeline.handling.SelfStable;
import rakeline.handling.Stability;
import rakeline.quantity.Caution;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Unit;

/** Eigenvalues over speed, hands off: growth of the three modes and the frequency of weave. */
public final class StabilityChart {
    /** What the model leaves out, as every figure of it says. */
    public static final Caution LEFT_OUT = new Caution(
            "linear model",
            "Linear model: small angles, hands off, rigid rider, thin tyres that neither slip nor give, no friction or air."
                    + " That a bicycle keeps itself upright with nobody's hands on the bar does not say how it handles.");

    /** The cautions of every figure and answer about stability. */
    public static final List<Caution> CAUTIONS = List.of(LEFT_OUT, HandlingMeasures.HANDS_OFF);

    private static final Quantity.Draft SPEED = Quantity.of(
                    "speedMps", "Speed", Unit.METRE_PER_SECOND, "Steady forward speed.")
            .decimals(2);
    private static final String MODEL = "linear model";

    private StabilityChart() {}

    /**
     * The chart.
     *
     * @param name of the bicycle
     * @param speeds rising, m/s
     */
    public static Chart of(String name, Stability stability, Numbers speeds) {
        List<Modes> modes = stability.modes(speeds);
        return new Chart(
                name + ": eigenvalues over speed; " + range(stability),
                marked(stability),
                speeds,
                Double.NaN,
                List.of(
                        panel(
                                growth("weaveRePerS", "Weave growth"),
                                modes,
                                m -> m.weave().re()),
                        panel(
                                frequency("weaveImPerS", "Weave frequency", "Angular frequency of the weave pair.")
                                        .declared(),
                                modes,
                                m -> m.weave().im()),
                        panel(
                                growth("capsizeRePerS", "Capsize growth"),
                                modes,
                                m -> m.capsize().re()),
                        panel(
                                growth("casteringRePerS", "Castering growth"),
                                modes,
                                m -> m.castering().re())),
                List.of(),
                "",
                CAUTIONS);
    }

    /** All eight numbers at each speed. */
    public static Table table(String name, Stability stability, Numbers speeds) {
        List<Modes> modes = stability.modes(speeds);
        return new Table(
                name + ": eigenvalues, 1/s; " + range(stability),
                Stream.of(
                                Stream.of(Column.ofSteps(SPEED.declared(), speeds)),
                                columns("weave", "Weave", modes, Modes::weave),
                                columns("weaveTwin", "Twin", modes, Modes::weaveTwin),
                                columns("capsize", "Capsize", modes, Modes::capsize),
                                columns("castering", "Castering", modes, Modes::castering))
                        .flatMap(columns -> columns)
                        .toList(),
                "",
                CAUTIONS);
    }

    /** The speed with the ends of the self-stable range, to a tenth of a millimetre a second, as its limits. */
    private static Quantity marked(Stability stability) {
        Quantity.Draft speed = SPEED;
        if (stability.selfStable().isPresent()) {
            SelfStable range = stability.selfStable().get();
            speed = speed.limit(rounded(range.fromMps()), "self-stable from here", MODEL);
            speed = Double.isFinite(range.toMps())
                    ? speed.limit(rounded(range.toMps()), "self-stable to here", MODEL)
                    : speed;
        }
        return speed.declared();
    }

    private static double rounded(double speedMps) {
        return Math.rint(speedMps * 1e4) / 1e4;
    }

    /** As in {@code self-stable from 4.292 to 6.024 m/s}. */
    public static String range(Stability stability) {
        return stability.selfStable().map(StabilityChart::words).orElse("self-stable at no speed");
    }

    private static String words(SelfStable range) {
        String from = "self-stable from " + Decimals.fixed(range.fromMps(), 3);
        return Double.isFinite(range.toMps())
                ? from + " to " + Decimals.fixed(range.toMps(), 3) + " m/s"
                : from + " m/s up";
    }

    private static Stream<Column> columns(
            String key, String label, List<Modes> modes, java.util.function.Function<Modes, Root> root) {
        return Stream.of(
                column(
                        rate(key + "RePerS", label + ", real", "Growth."),
                        modes,
                        m -> root.apply(m).re()),
                column(
                        frequency(key + "ImPerS", label + ", imaginary", "Angular frequency."),
                        modes,
                        m -> root.apply(m).im()));
    }

    private static Column column(Quantity.Draft quantity, List<Modes> modes, ToDoubleFunction<Modes> read) {
        Quantity declared = quantity.decimals(4).declared();
        Numbers values = numbers(modes, read);
        return new Column(
                declared.key(),
                declared.label(),
                "",
                values,
                values.stream().mapToObj(declared::format).toList());
    }

    private static Chart.Panel panel(Quantity quantity, List<Modes> modes, ToDoubleFunction<Modes> read) {
        return new Chart.Panel(quantity, numbers(modes, read), Double.NaN);
    }

    private static Numbers numbers(List<Modes> modes, ToDoubleFunction<Modes> read) {
        return Numbers.generate(modes.size(), i -> read.applyAsDouble(modes.get(i)));
    }

    private static Quantity growth(String key, String label) {
        return rate(key, label, "Real part of the eigenvalue: below 0 the motion dies out.")
                .limit(0, "dies out below 0", MODEL)
                .declared();
    }

    private static Quantity.Draft frequency(String key, String label, String definition) {
        return Quantity.of(key, label, Unit.RADIAN_PER_SECOND, definition).decimals(2);
    }

    private static Quantity.Draft rate(String key, String label, String definition) {
        return Quantity.of(key, label, Unit.PER_SECOND, definition).decimals(2);
    }
}
