package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that study a bike, on the built jar, with the shapes that others read. */
class StudiesIT {
    private static final Program PROGRAM = Program.inTheProject();
    private static final String BIKE = "demo-data/bikes/road-xs.bike.json";

    @TempDir
    Path folder;

    private static JsonNode json(String... arguments) {
        Ended ended = PROGRAM.run(arguments);
        assertThat(ended.code()).as(ended.messages()).isZero();
        return ended.objects().get(0);
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void reconcile() {
        JsonNode found = json("reconcile", BIKE, "--set", "charted.wheelbaseMm=980", "--json");
        assertThat(names(found.at("/residuals/charted.wheelbaseMm")))
                .containsExactly("charted", "derived", "residual", "tolerance", "within");
        assertThat(names(found.at("/suspects/0"))).containsExactly("key", "charted", "wouldBe", "sameAs");
        assertThat(found.at("/suspects/0/key").asText()).isIn("frame.chainstayMm", "charted.wheelbaseMm");
        assertThat(found.at("/suspects/0/sameAs/0").asText()).isIn("frame.chainstayMm", "charted.wheelbaseMm");
    }

    @Test
    void seekOutOfReach() {
        JsonNode found = json("seek", BIKE, "--vary", "fork.offsetMm=40:45", "--target", "trailMm=20", "--json");
        assertThat(found.get("solutions")).isEmpty();
        assertThat(names(found.get("nearest"))).containsExactly("at", "value");
        assertThat(found.at("/nearest/at").asDouble()).isEqualTo(45);
    }

    @Test
    void spread() {
        JsonNode found = json("spread", BIKE, "--track", "trailMm,toeContactSteerDeg", "--draws", "1000", "--json");
        assertThat(names(found)).containsExactly("trailMm", "toeContactSteerDeg");
        assertThat(names(found.get("trailMm"))).contains("value", "standardUncertainty", "nullShare");
    }

    @Test
    void mapWithFiles() throws IOException {
        Path csv = folder.resolve("map.csv");
        Path svg = folder.resolve("map.svg");
        JsonNode found = json(
                "map",
                BIKE,
                "--vary",
                "frame.headAngleDeg=70:72:1",
                "--vary",
                "frame.bbDropMm=70:74:2",
                "--track",
                "fork.offsetMm",
                "--hold",
                "trailMm=58",
                "--by",
                "fork.offsetMm",
                "--csv",
                csv.toString(),
                "--svg",
                svg.toString(),
                "--json");
        assertThat(found.get("values")).hasSize(3);
        assertThat(found.at("/held/by").asText()).isEqualTo("fork.offsetMm");
        assertThat(Files.readString(csv)).startsWith("frame.headAngleDeg,frame.bbDropMm,fork.offsetMm");
        assertThat(Files.readString(svg)).contains("<svg");
    }

    @Test
    void solve() {
        JsonNode found = json(
                "solve",
                BIKE,
                "--vary",
                "frame.headAngleDeg",
                "--vary",
                "fork.offsetMm",
                "--target",
                "trailMm=58",
                "--target",
                "frontCentreMm=580",
                "--json");
        assertThat(names(found.at("/solutions/0/values"))).containsExactly("frame.headAngleDeg", "fork.offsetMm");
        assertThat(found.get("nearest").isNull()).isTrue();
    }

    @Test
    void sizes() {
        JsonNode size = json("sizes", BIKE, "--floor", "frontCentreMm=580", "--hold", "trailMm=58", "--json")
                .at("/sizes/0");
        assertThat(names(size)).contains("bike", "keeps", "headAngleDeg", "offsetMm", "reason", "asDrawn", "measures");
        assertThat(size.at("/measures/trailMm").asDouble()).isBetween(57.999, 58.001);
    }
}
