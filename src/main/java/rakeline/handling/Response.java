package rakeline.handling;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.hipparchus.complex.Complex;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;
import rakeline.quantity.Unit;

/**
 * How the linear bicycle answers a torque at a steady speed. Lean and steer are to the side to which the torque acts, radians.
 *
 * @param speedMps steady speed
 * @param torque which of the two acts
 */
public record Response(LinearBicycle bicycle, double speedMps, Torque torque) {
    /** What acts. */
    public enum Torque {
        /** Between the bicycle and the ground's frame, about the forward axis. */
        LEAN(1, 0),
        /** On the bar, about the steering axis. */
        STEER(0, 1);

        private final double onLean;
        private final double onSteer;

        Torque(double onLean, double onSteer) {
            this.onLean = onLean;
            this.onSteer = onSteer;
        }

        /** How it is called: steer or lean. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * The torque of a word.
         *
         * @throws Refusal for another word than lean or steer
         */
        public static Torque of(String word) {
            for (Torque torque : values()) {
                if (torque.word().equals(word)) {
                    return torque;
                }
            }
            throw new Refusal("the torque is " + word + "; accepted is lean or steer.");
        }
    }

    /** Lean and steer, and how fast they change, at a time. */
    public record State(double leanRad, double steerRad, double leanRadPerS, double steerRadPerS) {}

    /** Lean and steer for each newton metre of a torque that swings, amplitude and phase in one complex number. */
    public record Swing(Complex leanRadPerNm, Complex steerRadPerNm) {}

    public Response {
        if (!(speedMps >= 0) || !Double.isFinite(speedMps)) {
            throw new Refusal("the speed is " + Unit.METRE_PER_SECOND.attach(Decimals.shown(speedMps))
                    + "; accepted is 0 or above.");
        }
    }

    /**
     * After a torque of 1 N m that sets in at time 0 upon straight upright running and stays, by the exact matrix
     * exponential.
     *
     * @param times s
     */
    public List<State> step(Numbers times) {
        return from(new State(0, 0, 0, 0), 1, times);
    }

    /** Left to itself from a state at time 0. */
    public List<State> free(State start, Numbers times) {
        return from(start, 0, times);
    }

    /** Whether every motion dies out by itself at this speed, so that a steady answer to a swing is ever reached. */
    public boolean isStable() {
        return ModeWalk.at(bicycle, Numbers.of(speedMps)).get(0).selfStable();
    }

    /** Steady answer to a torque that swings as cos ωt, angular frequency in rad/s. */
    public Swing at(double omega) {
        Complex[][] z = new Complex[2][2];
        double[][] m = bicycle.m().rows();
        double[][] c = bicycle.damping(speedMps).rows();
        double[][] k = bicycle.stiffness(speedMps).rows();
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                z[i][j] = new Complex(k[i][j] - omega * omega * m[i][j], omega * c[i][j]);
            }
        }
        Complex det = z[0][0].multiply(z[1][1]).subtract(z[0][1].multiply(z[1][0]));
        Complex lean = z[1][1].multiply(torque.onLean).subtract(z[0][1].multiply(torque.onSteer));
        Complex steer = z[0][0].multiply(torque.onSteer).subtract(z[1][0].multiply(torque.onLean));
        return new Swing(lean.divide(det), steer.divide(det));
    }

    private List<State> from(State start, double torqueNm, Numbers times) {
        RealMatrix rates = rates();
        double[] begin = {start.leanRad, start.steerRad, start.leanRadPerS, start.steerRadPerS, torqueNm};
        return IntStream.range(0, times.size())
                .mapToObj(i -> MatrixUtils.matrixExponential(rates.scalarMultiply(times.at(i)))
                        .operate(begin))
                .map(end -> new State(end[0], end[1], end[2], end[3]))
                .toList();
    }

    /** d/dt of (lean, steer, their rates, torque). */
    private RealMatrix rates() {
        Square inverse = inverse(bicycle.m());
        Square spring = product(inverse, bicycle.stiffness(speedMps));
        Square damper = product(inverse, bicycle.damping(speedMps));
        return MatrixUtils.createRealMatrix(new double[][] {
            {0, 0, 1, 0, 0},
            {0, 0, 0, 1, 0},
            {
                -spring.a11(),
                -spring.a12(),
                -damper.a11(),
                -damper.a12(),
                inverse.a11() * torque.onLean + inverse.a12() * torque.onSteer
            },
            {
                -spring.a21(),
                -spring.a22(),
                -damper.a21(),
                -damper.a22(),
                inverse.a21() * torque.onLean + inverse.a22() * torque.onSteer
            },
            {0, 0, 0, 0, 0}
        });
    }

    private static Square inverse(Square m) {
        return new Square(m.a22(), -m.a12(), -m.a21(), m.a11()).times(1 / m.determinant());
    }

    private static Square product(Square one, Square other) {
        return new Square(
                one.a11() * other.a11() + one.a12() * other.a21(),
                one.a11() * other.a12() + one.a12() * other.a22(),
                one.a21() * other.a11() + one.a22() * other.a21(),
                one.a21() * other.a12() + one.a22() * other.a22());
    }
}
