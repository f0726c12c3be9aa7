package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code run} as a whole process. */
class RunIT {
    private static final String DIAL = "double head = dial(\"Head angle\", \"°\", 69, 74, 0.1, 71.3);";
    private static final String BIKE = "Bike small = bike(\"demo-data/bikes/road-xs.bike.json\");";
    private static final String CHART =
            "var trails = sweep(small).over(\"frame.headAngleDeg\", 69, 74, 1).track(\"trailMm\").chart();";

    @TempDir
    Path folder;

    @Test
    void eachPageIsOneObjectOfTheShapeThatWasPromised() {
        Pages.write(folder.resolve("a.rakeline"), BIKE, CHART, "double far = 1.0 / 0;", "\"words\"", "int x = y;");
        Ended ended = Program.in(folder).run("run", "a.rakeline", "--json");
        assertThat(ended.code()).isEqualTo(1);
        JsonNode page = ended.objects().get(0);
        assertThat(page.get("file").asText()).isEqualTo("a.rakeline");
        assertThat(page.get("title").asText()).isEqualTo("A test");
        assertThat(page.get("rows"))
                .hasSize(5)
                .allSatisfy(row ->
                        assertThat(row.fieldNames()).toIterable().contains("id", "name", "state", "message", "result"));
        assertThat(page.at("/rows/1/result/kind").asText()).isEqualTo("chart");
        assertThat(page.at("/rows/1/result/columns/0/key").asText()).isEqualTo("frame.headAngleDeg");
        assertThat(page.at("/rows/1/result/columns/1/values")).hasSize(6);
        assertThat(page.at("/rows/2/result/kind").asText()).isEqualTo("value");
        assertThat(page.at("/rows/2/result/columns/0/values/0").isNull()).isTrue();
        assertThat(page.at("/rows/3/result/text").asText()).contains("words");
        assertThat(page.at("/rows/4/state").asText()).isEqualTo("failed");
        assertThat(page.at("/rows/4/result").isNull()).isTrue();
    }

    @Test
    void aFailedRowIsNamedOnStandardErrorAndTheOthersArePrinted() {
        Pages.write(folder.resolve("f.rakeline"), "int good = 1;", "int bad = good / 0;", "int later = good + 1;");
        Ended ended = Program.in(folder).run("run", "f.rakeline");
        assertThat(ended.code()).isEqualTo(1);
        assertThat(ended.data()).contains("good: 1", "later: 2").doesNotContain("bad");
        assertThat(ended.messages())
                .startsWith("f.rakeline, row bad, failed: Line 1: / by zero.\n")
                .hasLineCount(2);
    }

    @Test
    void aNumberHasTheUnitThatItsNameSays() {
        Pages.write(folder.resolve("f.rakeline"), "double computedDeg = -1.0504610179506955;", "int plain = 3;");
        assertThat(Program.in(folder).run("run", "f.rakeline").data()).contains("computedDeg: -1.1°\n", "plain: 3\n");
    }

    @Test
    void figuresAreWrittenUnderThePagesAndTheRowsName() {
        Pages.write(folder.resolve("page.rakeline"), BIKE, CHART, "int plain = 3;");
        Program.in(folder).run("run", "page.rakeline", "--out", "figures").isDone();
        assertThat(folder.resolve("figures").toFile().list())
                .containsExactlyInAnyOrder("page-trails.svg", "page-trails.csv");
    }

    @Test
    void withoutOutNothingIsWritten() {
        Pages.write(folder.resolve("page.rakeline"), BIKE, CHART);
        Program.in(folder).run("run", "page.rakeline").isDone();
        assertThat(folder.toFile().list()).containsExactly("page.rakeline");
    }

    @Test
    void anUnknownDialIsRefusedBeforeAnyRowRuns() {
        Path mark = folder.resolve("ran");
        Pages.write(folder.resolve("d.rakeline"), Pages.leave(mark), DIAL);
        Program.in(folder).run("run", "d.rakeline", "--set", "hed=72").isRefusedFor("hed", "d.rakeline", "head");
        assertThat(Files.exists(mark)).isFalse();
    }

    @Test
    void aDialOutOfItsRangeIsRefusedBeforeAnyRowRuns() {
        Path mark = folder.resolve("ran");
        Pages.write(folder.resolve("d.rakeline"), Pages.leave(mark), DIAL);
        Program.in(folder).run("run", "d.rakeline", "--set", "head=80").isRefusedFor("head", "80", "69..74");
        assertThat(Files.exists(mark)).isFalse();
    }

    /** The range of this dial is known only once the rows above it have run. */
    @Test
    void aDialOutOfARangeThatIsComputedIsRefusedBeforeAnythingIsPrinted() {
        String computed = "double head = dial(\"Head angle\", \"°\", least, least + 5, 0.1, 71);";
        Pages.write(folder.resolve("d.rakeline"), "double least = 69;", computed, "1 + 1");
        Program.in(folder).run("run", "d.rakeline", "--set", "head=80").isRefusedFor("head", "80", "69..74");
    }

    @Test
    void aRowThatNeverEndsIsStoppedByTheLimitGiven() {
        Pages.write(folder.resolve("e.rakeline"), "while (true) {}", "int later = 2;");
        Ended ended = Program.in(folder).run("run", "e.rakeline", "--time-limit", "1");
        assertThat(ended.code()).isEqualTo(1);
        assertThat(ended.messages()).contains("stopped").hasLineCount(1);
        assertThat(ended.data()).contains("later: 2");
    }
}
