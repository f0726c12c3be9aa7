package rakeline.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.quantity.Numbers;

/**
 * The benchmark bicycle of Meijaard, Papadopoulos, Ruina and Schwab 2007, tables 1 and 2 and the matrices of the same
 * paper (S).
 */
class BenchmarkBicycleTest {
    private static final double MATRIX = 1e-12;
    private static final double PUBLISHED = 1e-11;
    private static final Stability STABILITY = Stability.of(PublishedBicycles.benchmark());
    private static final LinearBicycle BICYCLE = STABILITY.bicycle();

    @Test
    void massIsAsPublished() {
        isCloseTo(BICYCLE.m(), 80.81722, 2.31941332208709, 2.31941332208709, 0.29784188199686);
    }

    @Test
    void dampingIsAsPublished() {
        isCloseTo(BICYCLE.c1(), 0, 33.86641391492494, -0.85035641456978, 1.68540397397560);
    }

    @Test
    void stiffnessOfGravityIsAsPublished() {
        isCloseTo(BICYCLE.k0(), -80.95, -2.59951685249872, -2.59951685249872, -0.80329488458618);
    }

    @Test
    void stiffnessOfSpeedIsAsPublished() {
        isCloseTo(BICYCLE.k2(), 0, 76.59734589573222, 0, 2.65431523794604);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 3.52696170990070, 0.80774027519930, -3.13423125066578, -7.11008014637442",
        "2, 2.68234517512745, 1.68066296590675, -3.07158645641514, -8.67387984831735",
        "4, 0.41325331521125, 3.07910818603206, -1.42944427361326, -12.15861426576447",
        "5, -0.77534188219585, 4.46486771378823, -0.32286642900409, -14.07838969279822",
        "8, -2.69348683581097, 8.46037971396931, 0.14327879765713, -20.27940894394569",
        "10, -3.72016840437287, 10.90681139476287, 0.16105338653172, -24.62459635017404"
    })
    void modesAreAsPublished(double speed, double re, double im, double capsize, double castering) {
        assertThat(numbers(STABILITY.modes(speed)))
                .usingComparatorWithPrecision(PUBLISHED)
                .containsExactly(re, im, re, -im, capsize, 0, castering, 0);
    }

    @Test
    void rootsAtStandstillAreAsPublished() {
        assertThat(numbers(STABILITY.modes(0)))
                .usingComparatorWithPrecision(PUBLISHED)
                .containsExactly(5.53094371765393, 0, 3.13164324790656, 0, -3.13164324790656, 0, -5.53094371765393, 0);
    }

    @Test
    void modesAtManySpeedsAreThoseAtEachAlone() {
        List<Modes> followed = STABILITY.modes(Numbers.generate(11, i -> i));
        assertThat(IntStream.range(0, 11))
                .allSatisfy(speed -> assertThat(numbers(followed.get(speed)))
                        .usingComparatorWithPrecision(PUBLISHED)
                        .containsExactly(numbers(STABILITY.modes(speed))));
    }

    @Test
    void weaveSpeedIsAsPublished() {
        assertThat(STABILITY.weaveSpeedMps()).hasValueCloseTo(4.29238253634111, within(PUBLISHED));
    }

    @Test
    void weaveFrequencyIsAsPublished() {
        assertThat(STABILITY.weaveFrequencyRadPerS()).hasValueCloseTo(3.43503384866144, within(PUBLISHED));
    }

    @Test
    void capsizeSpeedIsAsPublished() {
        assertThat(STABILITY.capsizeSpeedMps()).hasValueCloseTo(6.02426201538837, within(PUBLISHED));
    }

    @Test
    void doubleRootSpeedIsAsPublished() {
        assertThat(STABILITY.doubleRootSpeedMps()).hasValueCloseTo(0.68428307889246, within(PUBLISHED));
    }

    @Test
    void isSelfStableFromWeaveToCapsize() {
        assertThat(STABILITY.selfStable().orElseThrow())
                .isEqualTo(new SelfStable(
                        STABILITY.weaveSpeedMps().orElseThrow(),
                        STABILITY.capsizeSpeedMps().orElseThrow()));
    }

    private static void isCloseTo(Square matrix, double... published) {
        assertThat(new double[] {matrix.a11(), matrix.a12(), matrix.a21(), matrix.a22()})
                .usingComparatorWithPrecision(MATRIX)
                .containsExactly(published);
    }

    private static double[] numbers(Modes modes) {
        return modes.all().stream()
                .flatMapToDouble(root -> java.util.stream.DoubleStream.of(root.re(), root.im()))
                .toArray();
    }
}
