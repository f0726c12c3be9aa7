package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A steady turn, and what stem and bar change of it. */
class TurnCommandTest {
    private static final String ROAD = "demo-data/bikes/road-xs.bike.json";

    @Test
    void jsonGivesSteerRadiusTorqueAndHands() {
        JsonNode json = CommandLineRun.of("turn", ROAD, "--speed", "10", "--lean", "10", "--json")
                .isDone()
                .json();
        double hoods = json.at("/hands/hoods/leverMm").doubleValue();
        assertThat(json.get("beyondLinear").booleanValue()).isTrue();
        assertThat(json.at("/hands/hoods/oneHandN").doubleValue())
                .isCloseTo(json.get("barTorqueNm").doubleValue() * 1000 / hoods, within(1e-9));
        assertThat(json.get("toeContactSpeedKmh").doubleValue()).isBetween(5.0, 12.0);
    }

    @Test
    void eachChangeAloneAndTheRemainderMakeTheWhole() {
        JsonNode columns = CommandLineRun.of(
                        "turn",
                        ROAD,
                        "--speed",
                        "20",
                        "--lean",
                        "10",
                        "--change",
                        "cockpit.stemLengthMm=100",
                        "--change",
                        "cockpit.bar.widthMm=420",
                        "--json")
                .isDone()
                .json()
                .get("columns");
        double stem = columns.at("/2/values/0").doubleValue();
        double bar = columns.at("/3/values/0").doubleValue();
        assertThat(columns.at("/4/values/0").doubleValue())
                .isCloseTo(stem + bar + columns.at("/5/values/0").doubleValue(), within(1e-9));
        assertThat(stem).isPositive();
    }

    @Test
    void aTurnThatTellsOfToeContactHasItsCaution() {
        assertThat(cautions("10", "10")).anyMatch(caution -> caution.startsWith("Toe contact can throw a rider"));
        assertThat(CommandLineRun.of("turn", ROAD, "--speed", "10", "--lean", "10")
                        .isDone()
                        .data())
                .contains("toe and tyre meet", "Caution: Toe contact can throw a rider");
    }

    /** Friction of about 0.84 at 40°: common practice (CP). */
    @Test
    void aLeanBeyondThePedalsStrikeOrTheTyresGripIsSaid() {
        assertThat(cautions("20", "20")).noneMatch(caution -> caution.contains("is beyond"));
        assertThat(cautions("25", "38"))
                .anyMatch(caution -> caution.contains("where the lowest pedal meets the ground"))
                .noneMatch(caution -> caution.contains("what a tyre holds"));
        assertThat(cautions("25", "41")).anyMatch(caution -> caution.contains("about what a tyre holds on dry tarmac"));
    }

    private static List<String> cautions(String speed, String lean) {
        JsonNode json = CommandLineRun.of("turn", ROAD, "--speed", speed, "--lean", lean, "--json")
                .isDone()
                .json();
        return StreamSupport.stream(json.get("cautions").spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }

    @Test
    void leanAndRadiusTogetherAreRefused() {
        CommandLineRun.of("turn", ROAD, "--speed", "10", "--lean", "10", "--radius", "5")
                .isRefusedFor("--lean", "--radius");
    }

    @Test
    void speedsOfZeroAreRefused() {
        CommandLineRun.of("turn", ROAD, "--speed", "0", "--lean", "10").isRefusedFor("speed", "above 0");
    }

    @ParameterizedTest
    @CsvSource({
        "'--speed 15 --lean 51', 'the lean is 51°; accepted is above 0 and up to 50°.'",
        "'--speed 15 --lean 51 --json', 'the lean is 51°; accepted is above 0 and up to 50°.'",
        "'--speed 15 --lean 51 --change cockpit.stemLengthMm=100', 'the lean is 51°'",
        "'--speed 101 --lean 10', 'the speed is 101 km/h; accepted is above 0 and up to 100 km/h.'",
        "'--speed 40 --radius 5 --json', 'the lean in that turn is 68.'",
    })
    void aTurnThatIsNotAcceptedIsRefusedBeforeAnythingIsPrinted(String options, String sentence) {
        CommandLineRun.of(Stream.concat(Stream.of("turn", ROAD), Stream.of(options.split(" ")))
                        .toArray(String[]::new))
                .isRefusedFor(sentence);
    }

    @ParameterizedTest
    @CsvSource({"100, 50", "100, 0.001", "99.9, 49.99", "3.3, 50"})
    void upToTheEndsOfTheRangeATurnIsAccepted(String speed, String lean) {
        CommandLineRun.of("turn", ROAD, "--speed", speed, "--lean", lean).isDone();
        CommandLineRun.of("turn", ROAD, "--speed", speed, "--lean", lean, "--json")
                .isDone();
    }
}
