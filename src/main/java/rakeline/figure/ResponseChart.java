package rakeline.figure;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.hipparchus.complex.Complex;
import rakeline.handling.Response;
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
        return chart(
                title(name, response, "a step of 1 N m"),
                TIME,
                times,
                List.of(
                        panel("leanDeg", "Lean", states, state -> Math.toDegrees(state.leanRad())),
                        panel("steerDeg", "Steer", states, state -> Math.toDegrees(state.steerRad()))));
    }

    /**
     * Amplitude and phase for each newton metre of a torque that swings.
     *
     * @param omegas rad/s
     */
    public static Chart swing(String name, Response response, Numbers omegas) {
        List<Response.Swing> swings = omegas.stream().mapToObj(response::at).toList();
        return chart(
                title(name, response, "a swing of 1 N m"),
                FREQUENCY,
                omegas,
                List.of(
                        swing("leanDegPerNm", "Lean", swings, Response.Swing::leanRadPerNm),
                        phase("leanPhaseDeg", "Lean, phase", swings, Response.Swing::leanRadPerNm),
                        swing("steerDegPerNm", "Steer", swings, Response.Swing::steerRadPerNm),
                        phase("steerPhaseDeg", "Steer, phase", swings, Response.Swing::steerRadPerNm)));
    }

    private static Chart chart(String title, Quantity x, Numbers steps, List<Chart.Panel> panels) {
        return new Chart(title, x, steps, Double.NaN, panels, List.of(), "", List.of(StabilityChart.LEFT_OUT));
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
