package rakeline.study;

import rakeline.quantity.Quantity;

/**
 * A charted number beside the one that follows from the rest of the chart.
 *
 * @param quantity the charted input
 * @param tolerance what rounding alone can explain: half the printed step, plus each input's half step times its effect
 */
public record Residual(Quantity quantity, double charted, double derived, double tolerance) {
    /** Charted minus derived. */
    public double residual() {
        return charted - derived;
    }

    public boolean isWithin() {
        return Math.abs(residual()) <= tolerance;
    }
}
