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
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.catalogue.BikeFile;
import rakeline.geometry.Bike;

/** The fast search gives what the plain one gives: the same bikes in the same order. */
@Tag("slow")
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
    void theOptionsAreThoseOfThePlainSearchInItsOrder(Match match) {
        assertThat(match.all().options())
                .extracting(MatchAgainstPlainSearchTest::ranked)
                .containsExactlyElementsOf(PlainMatch.withoutEquivalentPosts(PlainMatch.all(match, true)).stream()
                        .map(MatchAgainstPlainSearchTest::ranked)
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theBestFewAreTheFirstOfAll(Match match) {
        List<Option> all = match.all().options();
        int few = Math.min(5, all.size());
        assertThat(match.best(few).options()).isEqualTo(all.subList(0, few));
    }

    private static List<Object> ranked(Option option) {
        return List.of(
                option.bike(),
                option.distanceMm(),
                !option.isWithinLimits(),
                option.tightest().map(Margin::inUncertainties).orElse(Double.POSITIVE_INFINITY));
    }

    private static List<Object> ranked(PlainMatch.Found found) {
        return List.of(found.bike(), found.distanceMm(), found.beyond(), found.tightest());
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
