package rakeline.figure;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hipparchus.complex.Complex;
import rakeline.handling.Response;
import rakeline.handling.SteadyTurn;
import rakeline.quantity.Caution;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Unit;

/** How the linear bicycle answers a torque, over time or over frequency. */
public final class ResponseChart {
    private static final Quantity TIME = Quantity.of("timeS", "Time", Unit.SECOND, "Since the torque set in.")
            .decimals(2)
            .declared();
    private static final Quantity FREQUENCY = Quantity.of(
                    "frequencyPerS", "Angular frequency", Unit.RADIAN_PER_SECOND, "Of the torque.")
            .decimals(2)
            .declared();

    private ResponseChart() {}

    /**
     * After a steady torque of 1 N m.
     *
     * @param times s
     */
    public static Chart step(String name, Response response, Numbers times) {
        List<Response.State> states = response.step(times);
        Chart.Panel lean = panel("leanDeg", "Lean", states, state -> Math.toDegrees(state.leanRad()));
        Chart.Panel steer = panel("steerDeg", "Steer", states, state -> Math.toDegrees(state.steerRad()));
        return chart(
                title(name, response, "a step of 1 N m"),
                TIME,
                times,
                List.of(lean, steer),
                beyondLinear(lean, steer, "").stream().toList());
    }

    /**
     * Amplitude and phase for each newton metre of a torque that swings.
     *
     * @param omegas rad/s
     */
    public static Chart swing(String name, Response response, Numbers omegas) {
        List<Response.Swing> swings = omegas.stream().mapToObj(response::at).toList();
        Chart.Panel lean = swing("leanDegPerNm", "Lean", swings, Response.Swing::leanRadPerNm);
        Chart.Panel steer = swing("steerDegPerNm", "Steer", swings, Response.Swing::steerRadPerNm);
        return chart(
                title(name, response, "a swing of 1 N m"),
                FREQUENCY,
                omegas,
                List.of(
                        lean,
                        phase("leanPhaseDeg", "Lean, phase", swings, Response.Swing::leanRadPerNm),
                        steer,
                        phase("steerPhaseDeg", "Steer, phase", swings, Response.Swing::steerRadPerNm)),
                Stream.concat(neverReached(response).stream(), beyondLinear(lean, steer, " for each N m").stream())
                        .toList());
    }

    private static Chart chart(
            String title, Quantity x, Numbers steps, List<Chart.Panel> panels, List<Caution> cautions) {
        List<Caution> all = Stream.concat(cautions.stream(), Stream.of(StabilityChart.LEFT_OUT))
                .toList();
        return new Chart(title, x, steps, Double.NaN, panels, List.of(), "", all);
    }

    /** What a swing's amplitudes are worth where the bicycle falls over meanwhile; empty where it does not. */
    public static Optional<Caution> neverReached(Response response) {
        return response.isStable()
                ? Optional.empty()
                : Optional.of(new Caution(
                        "never reached",
                        "At " + Decimals.fixed(response.speedMps(), 2)
                                + " m/s the bicycle is not stable hands off: its own motion grows, and the steady amplitudes"
                                + " given here are never reached."));
    }

    private static Optional<Caution> beyondLinear(Chart.Panel lean, Chart.Panel steer, String each) {
        String reached = Stream.of(lean, steer)
                .filter(panel -> most(panel) > SteadyTurn.LINEAR_TO_DEG)
                .map(panel -> panel.quantity().label().toLowerCase(Locale.ROOT) + " reaches "
                        + Unit.DEGREE.attach(Decimals.fixed(most(panel), 0)) + each)
                .collect(Collectors.joining(" and "));
        return reached.isEmpty()
                ? Optional.empty()
                : Optional.of(new Caution(
                        "beyond small angles",
                        reached.substring(0, 1).toUpperCase(Locale.ROOT) + reached.substring(1)
                                + ": the model is linear and stands for small angles, up to about "
                                + Unit.DEGREE.attach(Decimals.shown(SteadyTurn.LINEAR_TO_DEG)) + "."));
    }

    private static double most(Chart.Panel panel) {
        return panel.values().stream().map(Math::abs).max().orElse(0);
    }

    /** Whether an answer that is shown goes beyond the small angles for which the model stands. */
    public static boolean isBeyondLinear(Chart chart) {
        return chart.panels().stream()
                .filter(panel -> List.of("leanDeg", "steerDeg", "leanDegPerNm", "steerDegPerNm")
                        .contains(panel.quantity().key()))
                .anyMatch(panel -> most(panel) > SteadyTurn.LINEAR_TO_DEG);
    }

    private static String title(String name, Response response, String what) {
        return name + ": " + what + " of " + response.torque().word() + " torque at "
                + Decimals.fixed(response.speedMps(), 2) + " m/s";
    }

    private static <T> Chart.Panel panel(String key, String label, List<T> states, ToDoubleFunction<T> read) {
        return panel(key, label, Numbers.generate(states.size(), i -> read.applyAsDouble(states.get(i))));
    }

    private static Chart.Panel swing(
            String key, String label, List<Response.Swing> swings, Function<Response.Swing, Complex> read) {
        Quantity quantity = Quantity.of(
                        key, label, Unit.DEGREE_PER_NEWTON_METRE, "Amplitude for each newton metre of the torque.")
                .declared();
        Numbers sizes = Numbers.generate(swings.size(), i -> size(read.apply(swings.get(i))));
        return new Chart.Panel(quantity, sizes, Double.NaN);
    }

    /** Ahead of the torque where above 0; runs on where it passes half a turn. */
    private static Chart.Panel phase(
            String key, String label, List<Response.Swing> swings, Function<Response.Swing, Complex> read) {
        double[] phases = swings.stream()
                .mapToDouble(swing -> Math.toDegrees(read.apply(swing).getArgument()))
                .toArray();
        for (int i = 1; i < phases.length; i++) {
            phases[i] -= 360 * Math.rint((phases[i] - phases[i - 1]) / 360);
        }
        return panel(key, label, Numbers.of(phases));
    }

    private static Chart.Panel panel(String key, String label, Numbers values) {
        return new Chart.Panel(
                Quantity.of(key, label, Unit.DEGREE, "To the side to which the torque acts.")
                        .decimals(2)
                        .declared(),
                values,
                Double.NaN);
    }

    private static double size(Complex radians) {
        return Math.toDegrees(radians.norm());
    }
}
