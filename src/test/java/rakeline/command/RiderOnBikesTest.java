package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code --rider}, and {@code --set rider.KEY}, on the commands that read bikes. */
class RiderOnBikesTest {
    private static final String BIKE = "demo-data/bikes/endurance-xs.bike.json";
    private static final String OTHER = "demo-data/bikes/endurance-s.bike.json";
    private static final String RIDER = "demo-data/customer/customer.rider.json";
    private static final String SEATED = "demo-data/riders/rider-178.rider.json";

    @ParameterizedTest
    @CsvSource({
        "measure,--json",
        "sweep,--vary crank.lengthMm=160:170:5 --track kneeFlexionBottomDeg --json",
        "map,--vary crank.lengthMm=160:170:5 --vary rides --track kneeFlexionBottomDeg --json",
        "seek,--vary crank.lengthMm=100:200 --target kneeFlexionBottomDeg=30 --json",
        "solve,--vary cockpit.stemLengthMm --target torsoAngleDeg=45 --json",
        "sensitivity,--vary crank.lengthMm --track hipAngleAtTopDeg --json",
        "spread,--track frontSharePercent --draws 100 --json",
        "limits,--json",
        "sizes,--floor toeRoomMm=-30 --track torsoAngleDeg --json",
        "posture,--json",
        "refit,--json"
    })
    void aRiderCanBeOnTheBike(String command, String more) {
        String varied = more.replace("--vary rides", "--vary contact.sitYMm=620:630:5");
        String exchanged = command.equals("refit") ? "--set wheels.both.tyreMm=35 " : "";
        List<String> words =
                Stream.of(command, BIKE, "--rider", RIDER).flatMap(Stream::of).toList();
        String[] all = Stream.concat(words.stream(), Arrays.stream((exchanged + varied).split(" ", -1)))
                .toArray(String[]::new);
        assertThat(CommandLineRun.of(all).isDone().json()).isNotEmpty();
    }

    @Test
    void whatIsSetOfTheRiderWinsOverTheFile() {
        assertThat(share("--set", "rider.massKg=30")).isGreaterThan(share());
    }

    @Test
    void bikeAndRiderCanBeSetSideBySide() {
        JsonNode measures = measures("--set", "rider.inseamMm=800", "--set", "wheels.both.tyreMm=42");
        double standover = measures.get("standoverMm").asDouble();
        assertThat(measures.get("standoverClearanceMm").asDouble()).isCloseTo(800 - standover, within(1e-9));
    }

    @Test
    void aMisspeltNumberOfTheRiderIsRefusedWithTheNearest() {
        CommandLineRun.of("measure", BIKE, "--rider", RIDER, "--set", "rider.masKg=70")
                .isRefusedFor("rider.masKg", "rider.massKg?");
    }

    @Test
    void aNumberOfTheRiderOutOfItsRangeIsRefused() {
        CommandLineRun.of("measure", BIKE, "--rider", RIDER, "--set", "rider.massKg=900")
                .isRefusedFor("rider.massKg", "900", "10..250 kg");
    }

    @Test
    void aNumberOfARiderWhoIsNotThereIsRefused() {
        CommandLineRun.of("measure", BIKE, "--set", "rider.massKg=70").isRefusedFor("rider.massKg", "--rider");
    }

    @Test
    void keysListsTheNumbersOfARider() {
        assertThat(CommandLineRun.of("keys").isDone().data()).contains("rider.segments.thighMm", "rider.massKg");
        assertThat(CommandLineRun.of("keys", "rider.elbowDeg").isDone().data()).contains("0..180", "from memory");
    }

    @Test
    void aNumberOfTheRiderCanBeTracked() {
        JsonNode sweep = CommandLineRun.of(
                        "sweep",
                        BIKE,
                        "--rider",
                        RIDER,
                        "--vary",
                        "crank.lengthMm=160:170:10",
                        "--track",
                        "rider.segments.thighMm",
                        "--json")
                .json();
        // 0.245 × stature, Drillis and Contini 1966 in Winter (S2)
        assertThat(sweep.at("/columns/1/values/0").asDouble()).isCloseTo(0.245 * 1660, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 75, 100})
    void limitsSayWhatIsLeftOfTheInseam(double asked) {
        // 50 mm on the road, 75 unpaved, 100 off road: makers' manuals (CP)
        JsonNode limits = CommandLineRun.of("limits", BIKE, "--rider", RIDER, "--json")
                .json()
                .get("limits");
        JsonNode row = StreamSupport.stream(limits.spliterator(), false)
                .filter(each -> each.get("key").asText().equals("standoverClearanceMm")
                        && each.get("limit").asDouble() == asked)
                .findFirst()
                .orElseThrow();
        assertThat(row.get("left").get(0).asDouble())
                .isCloseTo(row.get("values").get(0).asDouble() - asked, within(1e-9));
        assertThat(row.get("source").asText()).contains("makers' manuals");
    }

    @Test
    void meansOfMeasuredRidersAreNoLimits() {
        String limits =
                CommandLineRun.of("limits", BIKE, "--rider", RIDER).isDone().data();
        assertThat(limits).contains("Knee flexion").doesNotContain("Holliday", "Shoulder angle");
    }

    @Test
    void compareSeatsTheSameRiderOnAll() {
        CommandLineRun run = CommandLineRun.of(
                "compare", BIKE, OTHER, "--rider", SEATED, "--only", "contact.sitXMm,torsoAngleDeg", "--json");
        assertThat(run.isDone().json().get("contact").asText()).isEqualTo("the contact points of Rider of 178 cm");
        assertThat(run.json().at("/measures/contact.sitXMm/values/1").asDouble())
                .isEqualTo(-229);
        assertThat(run.json().at("/measures/torsoAngleDeg/values/1").isNumber()).isTrue();
    }

    @Test
    void aRidersShoeOnAllBikesIsNoDifferenceBetweenThem() {
        CommandLineRun run = CommandLineRun.of("compare", BIKE, OTHER, "--rider", RIDER, "--only", "toeRoomMm");
        assertThat(run.isDone().messages()).doesNotContain("different shoes");
    }

    @Test
    void aRefitKeepsTheRider() {
        JsonNode refit = CommandLineRun.of("refit", BIKE, "--rider", RIDER, "--set", "fork.axleToCrownMm=390", "--json")
                .json();
        assertThat(refit.at("/after/torsoAngleDeg").asDouble())
                .isGreaterThan(refit.at("/before/torsoAngleDeg").asDouble());
    }

    private static double share(String... more) {
        return measures(more).get("frontSharePercent").asDouble();
    }

    private static JsonNode measures(String... more) {
        String[] usual = {"measure", BIKE, "--rider", RIDER, "--json"};
        return CommandLineRun.of(Stream.of(usual, more).flatMap(Arrays::stream).toArray(String[]::new))
                .json()
                .get("measures");
    }
}
