package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** A steady turn, and what stem and bar change of it. */
class TurnCommandTest {
    private static final String ROAD = "demo-data/bikes/road-xs.bike.json";
    private static final String RIDER = "demo-data/customer/customer.rider.json";

    @Test
    void torqueAndForceNeedARider() {
        JsonNode json = CommandLineRun.of("turn", ROAD, "--speed", "20", "--lean", "10", "--json")
                .isDone()
                .json();
        assertThat(json.get("barTorqueNm").isNull()).isTrue();
        assertThat(json.at("/hands/hoods/oneHandN").isNull()).isTrue();
        assertThat(json.at("/notices/0").asText()).contains("rider");
        CommandLineRun table = CommandLineRun.of("turn", ROAD, "--speed", "20", "--lean", "10");
        assertThat(table.isDone().data()).contains("need a rider").doesNotContain("Force per hand", "N m");
    }

    /** A tight radius leans further than anyone may enter; the toe's speed is still told. */
    @Test
    void aLeanThatFollowsFromARadiusMayBeBeyondWhatIsEntered() {
        CommandLineRun run = CommandLineRun.of("turn", ROAD, "--speed", "30", "--radius", "3")
                .isDone();
        assertThat(run.data()).contains("toe and tyre can touch at");
    }

    @Test
    void jsonGivesSteerRadiusTorqueAndHands() {
        JsonNode json = CommandLineRun.of("turn", ROAD, "--rider", RIDER, "--speed", "10", "--lean", "10", "--json")
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
                .contains("toe and tyre can touch", "Caution: Toe contact can throw a rider");
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
        CommandLineRun.of("turn", ROAD, "--speed", "15", "--lean", "51")
                .isRefusedFor("Lean (ride.leanDeg) is 51°", "0..50°");
    }
}
