package rakeline.catalogue.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.quantity.Refusal;

/** Whatever the bytes: read, doubted or refused in one sentence. */
class ChartFuzzTest {
    private static final int TRIES = 300;
    private static final String PIECES = "0123456789.,;:\t\n\r\"'°-–xX×()[]Stackmcindeg \u00A0\uFEFF\u0000é";

    /** The seed of the build; {@code -Drakeline.soak.seeds=N} takes that many more. */
    static LongStream seeds() {
        return LongStream.rangeClosed(0, Integer.getInteger("rakeline.soak.seeds", 0));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyBytes(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            byte[] bytes = new byte[random.nextInt(400)];
            random.nextBytes(bytes);
            readOrRefused(bytes);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyChangeToAChart(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            StringBuilder text = new StringBuilder(Charts.ONE);
            for (int change = random.nextInt(12); change >= 0; change--) {
                int at = random.nextInt(text.length());
                text.replace(at, Math.min(text.length(), at + random.nextInt(4)), piece(random));
            }
            readOrRefused(text.toString().getBytes(StandardCharsets.UTF_8));
        }
    }

    private static String piece(Random random) {
        int from = random.nextInt(PIECES.length());
        return PIECES.substring(from, Math.min(PIECES.length(), from + random.nextInt(4)));
    }

    private static void readOrRefused(byte[] bytes) {
        try {
            ChartImport read = ChartFile.read(bytes, Charts.FILE, new ChartImport.Wanted("maker", "", Map.of()));
            assertThat(read.doubts())
                    .allSatisfy(doubt ->
                            assertThat(doubt.sentence()).matches("(?s).*[.?]").doesNotContain("Exception"));
        } catch (Refusal refusal) {
            ChartFileTest.isOnePlainSentence(refusal);
        }
    }
}
