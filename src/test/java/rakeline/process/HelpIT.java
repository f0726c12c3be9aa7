package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.shell.ledger.OfferedWords;

/** What completion and help of the built program say. */
class HelpIT {
    private static final Program PROGRAM = Program.inTheProject();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "swee | sweep( | Sweeping Prelude.sweep(BikeOrRide bike) | Starts a sweep",
                "Bike xs = bike(\"a\"); xs.wi | with( | Bike Bike.with(String inputKey, double value) | redrawn",
                "Bike xs = bike(\"a\"); sweep(xs).ho | hold( | hold(String measureKey, double value) | Holds a measure",
                "Bike xs = bike(\"a\"); double d = dial(HEAD_A | HEAD_ANGLE | Head angle, ° | Steering axis to the ground",
                "Bike xs = bike(\"a\"); xs.with(\"frame.headA | frame.headAngleDeg | Head angle, ° | Steering axis to the ground"
            })
    void aWordThatIsOfferedComesWithItsParametersAndItsMeaning(
            String code, String word, String signature, String meaning) {
        List<String> lines = PROGRAM.runTest(OfferedWords.class, code)
                .isDone()
                .data()
                .lines()
                .toList();
        assertThat(lines)
                .anyMatch(line -> line.startsWith(word) && line.contains(signature))
                .anyMatch(line -> line.startsWith(word + ": ") && line.contains(meaning));
    }

    @Test
    void insideTheQuotesOfABikeTheBundledOnesAreOffered() {
        assertThat(PROGRAM.runTest(OfferedWords.class, "Bike xs = bike(\"")
                        .isDone()
                        .data())
                .contains("demo-data/bikes/road-xs.bike.json")
                .doesNotContain(".rider.json");
    }

    /** Two lines a way to call it: how, and what for. */
    @Test
    void everyWordOfTheRowsIsExplainedInHelp() {
        List<String> lines =
                PROGRAM.runTest(OfferedWords.class).isDone().data().lines().toList();
        assertThat(lines).hasSizeGreaterThan(90);
        for (int i = 0; i < lines.size(); i += 2) {
            assertThat(lines.get(i)).matches("\\w+: \\S+ \\w+\\(.*\\)").doesNotContain("arg0");
            assertThat(lines.get(i + 1)).matches("\\w+: [A-Z].{20,}");
        }
    }
}
