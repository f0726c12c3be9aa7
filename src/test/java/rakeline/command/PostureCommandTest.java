package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** {@code rakeline posture}. */
class PostureCommandTest {
    private static final String BIKE = "demo-data/bikes/road-m.bike.json";
    private static final String RIDER = "demo-data/riders/rider-178.rider.json";

    private static JsonNode json(String... more) {
        String[] usual = {"posture", BIKE, "--rider", RIDER, "--json"};
        String[] all = Stream.of(usual, more).flatMap(Arrays::stream).toArray(String[]::new);
        return CommandLineRun.of(all).json();
    }

    @Test
    void jsonHasItsShape() {
        assertThat(json().fieldNames())
                .toIterable()
                .containsExactly("bike", "rider", "riderFile", "measures", "assumed", "massTable", "notices");
    }

    @Test
    void whatIsAssumedIsListed() {
        assertThat(json().get("assumed").get("hipUpMm").doubleValue()).isEqualTo(85);
    }

    @Test
    void aRidersContactPointsDrawOneNotice() {
        assertThat(json().get("notices")).hasSize(1);
        assertThat(json().get("notices").get(0).asText()).contains("contact", RIDER, BIKE);
    }

    @Test
    void hoodsThatAreElsewhereDrawANotice() {
        JsonNode notices = json("--set", "cockpit.stemLengthMm=60").get("notices");
        assertThat(notices).hasSize(2);
        assertThat(notices.get(1).asText())
                .startsWith("The hands are on the hoods as built, 3")
                .contains("mm from");
    }

    @Test
    void otherCranksAreRows() {
        JsonNode columns = json("--crank", "172.5,170,165,160").get("cranks").get("columns");
        assertThat(columns.get(0).get("key").asText()).isEqualTo("crank.lengthMm");
        double first = columns.get(1).get("values").get(0).doubleValue();
        assertThat(columns.get(1).get("values").get(3).doubleValue()).isCloseTo(first + 12.5, within(1e-9));
    }

    @Test
    void measureKnowsTheRiderToo() {
        JsonNode measures = CommandLineRun.of("measure", BIKE, "--rider", RIDER, "--json")
                .json()
                .get("measures");
        assertThat(measures.get("torsoAngleDeg").doubleValue()).isBetween(30.0, 60.0);
    }
}
