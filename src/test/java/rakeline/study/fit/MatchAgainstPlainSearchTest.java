package rakeline.study.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.catalogue.BikeFile;
import rakeline.geometry.Bike;

/** The fast search gives what the plain one gives: the same bikes in the same order. */
class MatchAgainstPlainSearchTest {
    private static final long SEED = 20260;
    private static final int CASES = 25;

    static Stream<Match> cases() {
        Random random = new Random(SEED);
        List<Bike> bikes = bikes();
        return IntStream.range(0, CASES)
                .mapToObj(i -> Match.of(
                        bikes.get(random.nextInt(bikes.size())),
                        bikes.get(random.nextInt(bikes.size())),
                        Stocks.random(random)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theOptionsAreThoseOfThePlainSearch(Match match) {
        List<PlainMatch.Found> plain = PlainMatch.all(match, true);
        assertThat(match.all().options().stream().map(Option::bike))
                .containsExactlyElementsOf(
                        plain.stream().map(PlainMatch.Found::bike).toList());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void distancesAndCountsAreThoseOfThePlainSearch(Match match) {
        List<PlainMatch.Found> plain = PlainMatch.all(match, true);
        List<Option> fast = match.all().options();
        for (int i = 0; i < plain.size(); i++) {
            assertThat(fast.get(i).distanceMm()).isEqualTo(plain.get(i).distanceMm());
            assertThat(fast.get(i).exceeded()).hasSize(plain.get(i).exceeded());
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theBestFewAreTheFirstOfAll(Match match) {
        List<Option> all = match.all().options();
        int few = Math.min(5, all.size());
        assertThat(match.best(few).options().stream().map(Option::bike))
                .containsExactlyElementsOf(
                        all.subList(0, few).stream().map(Option::bike).toList());
    }

    private static List<Bike> bikes() {
        List<Bike> bikes = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("demo-data", "bikes"))) {
            for (Path file : files.sorted().toList()) {
                bikes.add(BikeFile.read(Files.readAllBytes(file), file.toString()));
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return bikes;
    }
}
