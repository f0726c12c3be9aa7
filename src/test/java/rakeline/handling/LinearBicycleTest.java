package rakeline.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.handling.BicycleParameters.Body;
import rakeline.handling.BicycleParameters.Wheel;
import rakeline.handling.Response.State;
import rakeline.handling.Response.Torque;
import rakeline.quantity.Numbers;

/** Laws that hold for every linear bicycle, and the measured ones. */
class LinearBicycleTest {
    private static final double TIGHT = 1e-9;

    static Stream<BicycleParameters> bicycles() {
        return Stream.of(PublishedBicycles.benchmark(), PublishedBicycles.specimenA(), PublishedBicycles.specimenB());
    }

    @ParameterizedTest
    @MethodSource("bicycles")
    void massIsSymmetric(BicycleParameters parameters) {
        Square m = LinearBicycle.of(parameters).m();
        assertThat(m.a12()).isEqualTo(m.a21());
    }

    @ParameterizedTest
    @MethodSource("bicycles")
    void stiffnessOfGravityIsSymmetric(BicycleParameters parameters) {
        Square k0 = LinearBicycle.of(parameters).k0();
        assertThat(k0.a12()).isEqualTo(k0.a21());
    }

    /** ½ q'ᵀ M q' + ½ qᵀ g K0 q: at standstill nothing takes energy away. */
    @ParameterizedTest
    @MethodSource("bicycles")
    void energyStaysAtStandstill(BicycleParameters parameters) {
        LinearBicycle bicycle = LinearBicycle.of(parameters);
        State start = new State(0.02, -0.03, 0.01, 0.05);
        List<State> states = new Response(bicycle, 0, Torque.STEER).free(start, Numbers.generate(11, i -> 0.1 * i));
        assertThat(states)
                .allSatisfy(
                        state -> assertThat(energy(bicycle, state)).isCloseTo(energy(bicycle, start), within(1e-10)));
    }

    @ParameterizedTest
    @MethodSource("bicycles")
    void capsizeSpeedIsWhereTheCapsizeRootCrosses(BicycleParameters parameters) {
        Stability stability = Stability.of(parameters);
        double speed = stability.capsizeSpeedMps().orElseThrow();
        assertThat(stability.modes(speed).capsize().re()).isCloseTo(0, within(TIGHT));
    }

    @ParameterizedTest
    @MethodSource("bicycles")
    void weaveSpeedIsWhereTheWeavePairCrosses(BicycleParameters parameters) {
        Stability stability = Stability.of(parameters);
        double speed = stability.weaveSpeedMps().orElseThrow();
        assertThat(stability.modes(speed).weave().re()).isCloseTo(0, within(TIGHT));
    }

    /** Moore 2012, parameters (S); critical speeds derived (D): a second zero at 0.5132 m/s is no weave. */
    @Test
    void specimenAHasItsSpeeds() {
        Stability stability = Stability.of(PublishedBicycles.specimenA());
        assertThat(stability.weaveSpeedMps()).hasValueCloseTo(4.19750, within(5e-6));
        assertThat(stability.capsizeSpeedMps()).hasValueCloseTo(4.35979, within(5e-6));
    }

    /** Moore 2012, parameters (S); critical speeds derived (D). */
    @Test
    void specimenBHasItsSpeeds() {
        Stability stability = Stability.of(PublishedBicycles.specimenB());
        assertThat(stability.weaveSpeedMps()).hasValueCloseTo(3.60578, within(5e-6));
        assertThat(stability.capsizeSpeedMps()).hasValueCloseTo(5.30405, within(5e-6));
    }

    /** Dimensional analysis (D): k times as large and as heavy as k³ needs speeds √k as high. */
    @ParameterizedTest
    @MethodSource("bicycles")
    void criticalSpeedsGrowWithTheRootOfSize(BicycleParameters parameters) {
        Stability small = Stability.of(parameters);
        Stability large = Stability.of(grown(parameters, 2.25));
        assertThat(large.weaveSpeedMps())
                .hasValueCloseTo(1.5 * small.weaveSpeedMps().orElseThrow(), within(TIGHT));
        assertThat(large.capsizeSpeedMps())
                .hasValueCloseTo(1.5 * small.capsizeSpeedMps().orElseThrow(), within(TIGHT));
    }

    @ParameterizedTest
    @MethodSource("bicycles")
    void rootsSolveTheEquationsOfMotion(BicycleParameters parameters) {
        Stability stability = Stability.of(parameters);
        assertThat(stability.modes(Numbers.generate(60, i -> 0.25 * i)))
                .allSatisfy(modes -> assertThat(modes.all())
                        .allSatisfy(root -> assertThat(residual(stability.bicycle(), modes.speedMps(), root))
                                .isLessThan(1e-10)));
    }

    /** Also where real roots of both factors meet, so that the modes have to be found anew. */
    @Test
    void rootsOfSeededBicyclesSolveTheEquationsOfMotion() {
        Random random = new Random(7);
        for (int i = 0; i < 60; i++) {
            Stability stability = Stability.of(seeded(random));
            stability.doubleRootSpeedMps();
            for (Modes modes : stability.modes(Numbers.generate(12, step -> 1.1 * step))) {
                assertThat(modes.all())
                        .allSatisfy(root -> assertThat(residual(stability.bicycle(), modes.speedMps(), root))
                                .isLessThan(1e-10));
            }
        }
    }

    @Test
    void leaningStiffnessVanishesAtTheCapsizeSpeed() {
        Stability stability = Stability.of(PublishedBicycles.benchmark());
        double capsize = stability.capsizeSpeedMps().orElseThrow();
        assertThat(new SteerStiffness(stability.bicycle()).leaningNmPerRad(capsize))
                .isCloseTo(0, within(TIGHT));
    }

    @Test
    void uprightStiffnessVanishesAtItsZero() {
        SteerStiffness stiffness = new SteerStiffness(LinearBicycle.of(PublishedBicycles.benchmark()));
        assertThat(stiffness.uprightNmPerRad(stiffness.uprightZeroMps().orElseThrow()))
                .isCloseTo(0, within(TIGHT));
    }

    /** In the self-stable range a step settles on the static solution of (g K0 + v² K2) q = f. */
    @Test
    void aStepOfTorqueSettlesOnTheStaticSolution() {
        LinearBicycle bicycle = LinearBicycle.of(PublishedBicycles.benchmark());
        State late =
                new Response(bicycle, 5, Torque.STEER).step(Numbers.of(120)).get(0);
        Square k = bicycle.stiffness(5);
        assertThat(late.steerRad()).isCloseTo(k.a11() / k.determinant(), within(TIGHT));
        assertThat(late.leanRad()).isCloseTo(-k.a12() / k.determinant(), within(TIGHT));
    }

    @Test
    void aVerySlowSwingIsTheStaticSolution() {
        LinearBicycle bicycle = LinearBicycle.of(PublishedBicycles.benchmark());
        Square k = bicycle.stiffness(5);
        assertThat(new Response(bicycle, 5, Torque.LEAN).at(0).leanRadPerNm().getReal())
                .isCloseTo(k.a22() / k.determinant(), within(1e-12));
    }

    private static double energy(LinearBicycle bicycle, State state) {
        return form(bicycle.m(), state.leanRadPerS(), state.steerRadPerS())
                + form(bicycle.stiffness(0), state.leanRad(), state.steerRad());
    }

    private static double form(Square a, double x, double y) {
        return (a.a11() * x * x + (a.a12() + a.a21()) * x * y + a.a22() * y * y) / 2;
    }

    /** |det(M s² + v C1 s + K)| beside the size of its terms. */
    private static double residual(LinearBicycle bicycle, double v, Root root) {
        var s = new org.hipparchus.complex.Complex(root.re(), root.im());
        var z = new org.hipparchus.complex.Complex[4];
        double[][] parts = {flat(bicycle.m()), flat(bicycle.damping(v)), flat(bicycle.stiffness(v))};
        double size = 0;
        for (int i = 0; i < 4; i++) {
            z[i] = s.multiply(s)
                    .multiply(parts[0][i])
                    .add(s.multiply(parts[1][i]))
                    .add(parts[2][i]);
            size = Math.max(size, z[i].norm());
        }
        double terms = parts[0][0] * parts[0][3] * Math.pow(1 + s.norm(), 4) + size;
        return z[0].multiply(z[3]).subtract(z[1].multiply(z[2])).norm() / terms;
    }

    private static double[] flat(Square a) {
        return new double[] {a.a11(), a.a12(), a.a21(), a.a22()};
    }

    private static BicycleParameters grown(BicycleParameters p, double k) {
        return new BicycleParameters(
                p.w() * k,
                p.c() * k,
                p.lambdaRad(),
                p.g(),
                grown(p.rear(), k),
                grown(p.frame(), k),
                grown(p.fork(), k),
                grown(p.front(), k));
    }

    private static Wheel grown(Wheel wheel, double k) {
        double moment = Math.pow(k, 5);
        return new Wheel(
                wheel.letter(),
                wheel.radius() * k,
                wheel.mass() * k * k * k,
                wheel.ixx() * moment,
                wheel.iyy() * moment);
    }

    private static Body grown(Body body, double k) {
        double moment = Math.pow(k, 5);
        return new Body(
                body.letter(),
                body.x() * k,
                body.z() * k,
                body.mass() * k * k * k,
                body.ixx() * moment,
                body.ixz() * moment,
                body.iyy() * moment,
                body.izz() * moment);
    }

    private static BicycleParameters seeded(Random random) {
        double w = random.nextDouble(0.6, 1.8);
        return new BicycleParameters(
                w,
                random.nextDouble(-0.15, 0.25),
                random.nextDouble(-0.3, 0.7),
                9.81,
                wheel("R", random),
                new Body(
                        "B",
                        random.nextDouble(0, w),
                        random.nextDouble(-1.2, -0.3),
                        random.nextDouble(1, 90),
                        random.nextDouble(0.3, 9),
                        random.nextDouble(-0.2, 0.2),
                        random.nextDouble(0.5, 9),
                        random.nextDouble(0.3, 3)),
                new Body(
                        "H",
                        random.nextDouble(0.6, 1.1) * w,
                        random.nextDouble(-1, -0.4),
                        random.nextDouble(0.5, 8),
                        random.nextDouble(0.05, 0.3),
                        random.nextDouble(-0.02, 0),
                        random.nextDouble(0.05, 0.3),
                        random.nextDouble(0.01, 0.1)),
                wheel("F", random));
    }

    private static Wheel wheel(String letter, Random random) {
        return new Wheel(
                letter,
                random.nextDouble(0.2, 0.4),
                random.nextDouble(0.5, 4.5),
                random.nextDouble(0.01, 0.1),
                random.nextDouble(0.02, 0.3));
    }
}
