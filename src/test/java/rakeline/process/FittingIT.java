package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands for a customer, on the built jar, with the shapes that others read. */
class FittingIT {
    private static final Program PROGRAM = Program.inTheProject();
    private static final String XS = "demo-data/bikes/endurance-xs.bike.json";
    private static final String S = "demo-data/bikes/endurance-s.bike.json";
    private static final String PRESENT = "demo-data/customer/present.bike.json";
    private static final String RIDER = "demo-data/customer/customer.rider.json";
    private static final String PARTS = "demo-data/customer/customer.parts.json";

    @TempDir
    Path folder;

    private static JsonNode json(String... arguments) {
        Ended ended = PROGRAM.run(arguments);
        assertThat(ended.code()).as(ended.messages()).isZero();
        return ended.objects().get(0);
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new java.util.ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void posture() {
        JsonNode posture = json("posture", PRESENT, "--rider", RIDER, "--crank", "170,160", "--json");
        assertThat(names(posture.get("measures")))
                .contains(
                        "kneeFlexionBottomDeg",
                        "kneeFlexionLeastDeg",
                        "hipAngleAtTopDeg",
                        "hipAngleLeastDeg",
                        "torsoAngleDeg",
                        "massCentreXMm",
                        "massCentreYMm",
                        "frontSharePercent");
        assertThat(posture.at("/cranks/columns/0/values")).hasSize(2);
    }

    @Test
    void match() {
        JsonNode best = json("match", XS, "--to", PRESENT, "--parts", PARTS, "--top", "3", "--json")
                .get("options")
                .get(0);
        assertThat(names(best))
                .startsWith("stemLengthMm", "stemAngleDeg", "spacersMm")
                .contains("handDxMm", "handDyMm", "distanceMm", "limits");
        assertThat(best.get("distanceMm").asDouble()).isLessThan(3);
        assertThat(best.get("limits").isArray()).isTrue();
    }

    @Test
    void compareWithFiles() throws IOException {
        Path csv = folder.resolve("a.csv");
        Path svg = folder.resolve("a.svg");
        Ended ended = PROGRAM.run(
                "compare",
                PRESENT,
                XS,
                S,
                "--same-contact",
                "--parts",
                PARTS,
                "--only",
                "handMissMm,toeRoomMm",
                "--csv",
                csv.toString(),
                "--svg",
                svg.toString(),
                "--json");
        assertThat(names(ended.objects().get(0))).contains("bikes", "contact", "measures", "limits");
        assertThat(Files.readString(csv)).startsWith("measure,bike1,bike2,difference2");
        assertThat(Files.readString(svg)).contains("<svg");
    }

    @Test
    void limits() {
        JsonNode row = json("limits", XS, S, "--rider", RIDER, "--json").at("/limits/0");
        assertThat(names(row)).containsExactly("key", "limit", "side", "label", "source", "values", "left");
        assertThat(row.get("left")).hasSize(2);
    }

    @Test
    void importWritesWhatItShows() throws IOException {
        Path chart = Files.writeString(folder.resolve("chart.csv"), """
                Size;S
                Stack (cm);52,5
                Reach (cm);37,9
                HTA;72,4
                STA;74
                Chainstay (cm);41
                BB drop (cm);7,2
                Rake (cm);4,4
                Wheel;700c
                Tyre;28
                Wheelbase (cm);97,5
                """);
        JsonNode read = json("import", chart.toString(), "--name", "Maker", "--out", folder + "/bikes", "--json");
        assertThat(names(read)).containsExactly("bikes", "understood", "leftOut", "notes", "doubts", "written");
        assertThat(read.at("/bikes/0/frame/stackMm").asDouble()).isEqualTo(525);
        assertThat(folder.resolve("bikes/Maker S.bike.json")).exists();
    }
}
