package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code rakeline refit}. */
class RefitCommandTest {
    private static final String DEMO =
            Path.of("demo-data", "bikes", "road-xs.bike.json").toString();

    @TempDir
    Path folder;

    @Test
    void jsonHoldsInputsAndMeasuresBeforeAndAfter() {
        JsonNode json = refit("fork.axleToCrownMm=390");
        for (String state : new String[] {"before", "after"}) {
            assertThat(json.get(state).fieldNames())
                    .toIterable()
                    .contains(
                            "frame.headAngleDeg",
                            "fork.axleToCrownMm",
                            "wheels.front.radiusMm",
                            "trailMm",
                            "toeRoomMm");
        }
        assertThat(json.get("after").get("fork.axleToCrownMm").doubleValue()).isEqualTo(390);
    }

    @Test
    void theHeadAngleTurnsByThePitch() {
        JsonNode json = refit("fork.axleToCrownMm=390");
        assertThat(number(json, "before", "frame.headAngleDeg") - number(json, "after", "frame.headAngleDeg"))
                .isCloseTo(json.get("pitchDeg").doubleValue(), within(1e-9));
    }

    @Test
    void theMissOfTheContactPointsIsGiven() {
        JsonNode miss = refit("fork.axleToCrownMm=390").get("miss");
        assertThat(miss.fieldNames()).toIterable().containsExactly("sitXMm", "sitYMm", "handXMm", "handYMm");
        assertThat(miss.get("sitXMm").doubleValue()).isNegative();
    }

    @Test
    void theSameForkChangesNothing() {
        JsonNode before = refit("fork.sagMm=0").get("before");
        double length = before.get("fork.axleToCrownMm").doubleValue();
        JsonNode json = refit("fork.axleToCrownMm=" + length);
        assertThat(json.get("after")).isEqualTo(json.get("before"));
    }

    @Test
    void theTableShowsBothStatesAndTheTurn() {
        CommandLineRun run = CommandLineRun.of("refit", DEMO, "--set", "wheels.front.tyreMm=32");
        assertThat(run.isDone().data()).contains("Before", "After", "Head angle, °", "refitted", "nose up");
    }

    @Test
    void aNumberOfTheFrameIsRefused() {
        CommandLineRun.of("refit", DEMO, "--set", "frame.headAngleDeg=72").isRefusedFor("frame.headAngleDeg", "rigid");
    }

    @Test
    void aForkOfUnknownLengthIsRefused() throws IOException {
        String bike = Files.writeString(folder.resolve("small.bike.json"), BikeTexts.PLAIN)
                .toString();
        CommandLineRun.of("refit", bike, "--set", "fork.offsetMm=50").isRefusedFor("fork.axleToCrownMm");
    }

    @Test
    void nothingToExchangeIsRefused() {
        CommandLineRun.of("refit", DEMO).isRefusedFor("--set");
    }

    @Test
    void aMisspeltKeyIsRefused() {
        CommandLineRun.of("refit", DEMO, "--set", "fork.sagmm=5").isRefusedFor("fork.sagmm", "fork.sagMm");
    }

    private static double number(JsonNode json, String state, String key) {
        return json.get(state).get(key).doubleValue();
    }

    private static JsonNode refit(String change) {
        return CommandLineRun.of("refit", DEMO, "--set", change, "--json")
                .isDone()
                .json();
    }
}
