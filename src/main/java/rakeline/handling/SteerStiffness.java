package rakeline.handling;

import java.util.OptionalDouble;

/**
 * Torque that holds the bar a small angle off straight, per angle: upright, the lean held at 0, and leaning, the lean left
 * to balance.
 */
public record SteerStiffness(LinearBicycle bicycle) {

    /** Lean held at 0: (g K0 + v² K2)₂₂, N m/rad. */
    public double uprightNmPerRad(double speedMps) {
        return bicycle.stiffness(speedMps).a22();
    }

    /** Lean left to balance: det(g K0 + v² K2) / (g K0₁₁), N m/rad. */
    public double leaningNmPerRad(double speedMps) {
        Square stiffness = bicycle.stiffness(speedMps);
        return stiffness.determinant() / stiffness.a11();
    }

    /** The speed at which the upright stiffness changes sign, m/s. */
    public OptionalDouble uprightZeroMps() {
        double square =
                -bicycle.parameters().g() * bicycle.k0().a22() / bicycle.k2().a22();
        return square > 0 && Double.isFinite(square) ? OptionalDouble.of(Math.sqrt(square)) : OptionalDouble.empty();
    }
}
