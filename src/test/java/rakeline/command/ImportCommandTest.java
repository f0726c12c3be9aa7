package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code rakeline import} and {@code rakeline export}. */
class ImportCommandTest {
    private static final String CHART = """
            Size;Stack;Reach;HTA;STA;Chainstay;BB drop;Rake;Wheel;Tyre;Wheelbase
            S;525;379;72,4;74;410;72;44;700c;28;972
            M;546;387;73;73,6;410;70;43;700c;28;982
            """;
    private static final String XS = "demo-data/bikes/road-xs.bike.json";

    @TempDir
    Path folder;

    private Path out;

    @BeforeEach
    void nameTheFolder() {
        out = folder.resolve("bikes");
    }

    @Test
    void withoutAFolderItIsAPreview() throws IOException {
        CommandLineRun run = CommandLineRun.of("import", chart(CHART)).isDone();
        assertThat(run.data()).contains("frame.headAngleDeg", "72.4", "row 1, column 4 \"HTA\" is frame.headAngleDeg");
        assertThat(files(folder)).containsExactly("maker.csv");
    }

    @Test
    void withAFolderEachSizeIsABikeFile() throws IOException {
        CommandLineRun.of("import", chart(CHART), "--name", "Road", "--out", out.toString())
                .isDone();
        assertThat(files(out)).containsExactly("Road M.bike.json", "Road S.bike.json");
        CommandLineRun.of("check", out.resolve("Road S.bike.json").toString()).isDone();
    }

    @Test
    void aDoubtfulCellIsNamedAndTheOtherSizesAreWritten() throws IOException {
        CommandLineRun run = CommandLineRun.of("import", chart(CHART.replace("387", "38,7")), "--out", out.toString());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.messages()).contains("row 3, column 3 \"38,7\"", "frame.reachMm", "cm in the heading");
        assertThat(files(out)).containsExactly("S.bike.json");
    }

    @Test
    void aNumberThatTheChartLacksIsSaidOnce() throws IOException {
        String bare = CHART.replace("Tyre;", "").replace("700c;28;", "700c;");
        CommandLineRun run = CommandLineRun.of("import", chart(bare));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.messages()).contains("\"S, M\": wheels.both.tyreMm is missing.", "--set KEY=VALUE");
        CommandLineRun.of("import", chart(bare), "--set", "wheels.both.tyreMm=28")
                .isDone();
    }

    @Test
    void aFileThatIsThereIsReplacedOnlyWhereAllowed() throws IOException {
        Files.createDirectory(out);
        Files.writeString(out.resolve("M.bike.json"), "mine");
        CommandLineRun.of("import", chart(CHART), "--out", out.toString()).isRefusedFor("M.bike.json", "--replace");
        assertThat(files(out)).containsExactly("M.bike.json");
        CommandLineRun.of("import", chart(CHART), "--out", out.toString(), "--replace")
                .isDone();
        assertThat(files(out)).containsExactly("M.bike.json", "S.bike.json");
    }

    @Test
    void sizesOfOneFileNameAreRefused() throws IOException {
        String text = CHART.replace("\nM;", "\ns;");
        CommandLineRun.of("import", chart(text), "--out", out.toString()).isRefusedFor("S", "s", "same file");
    }

    @Test
    void aNameThatIsNoFileNameIsMadeOne() throws IOException {
        CommandLineRun.of("import", chart(CHART.replace("\nM;", "\n../M:5;")), "--out", out.toString())
                .isDone();
        assertThat(files(out)).containsExactly("-M-5.bike.json", "S.bike.json");
        assertThat(files(folder)).containsExactly("bikes", "maker.csv");
    }

    @Test
    void theJsonTellsEverything() throws IOException {
        JsonNode json = CommandLineRun.of("import", chart(CHART), "--json", "--out", out.toString())
                .isDone()
                .json();
        assertThat(json.fieldNames())
                .toIterable()
                .containsExactly("bikes", "understood", "leftOut", "notes", "doubts", "written");
        assertThat(json.at("/bikes/1/frame/reachMm").doubleValue()).isEqualTo(387);
        assertThat(json.at("/written")).hasSize(2);
        assertThat(json.at("/understood/1/key").textValue()).isEqualTo("frame.stackMm");
    }

    @Test
    void whatIsExportedIsImportedAsItWas() throws IOException {
        Path csv = folder.resolve("all.csv");
        CommandLineRun.of("export", XS, "--csv", csv.toString()).isDone();
        CommandLineRun.of("import", csv.toString(), "--out", out.toString()).isDone();
        String before = CommandLineRun.of("export", XS, "--json").isDone().data();
        String after = CommandLineRun.of(
                        "export", out.resolve("Road XS.bike.json").toString(), "--json")
                .isDone()
                .data();
        assertThat(after).isEqualTo(before);
    }

    @Test
    void anExportIsAHeaderOfKeysAndARowABike() {
        CommandLineRun run = CommandLineRun.of("export", XS, "demo-data/bikes/road-m.bike.json")
                .isDone();
        assertThat(run.lines()).hasSize(3).first().asString().startsWith("name,frame.stackMm,frame.reachMm,");
    }

    @Test
    void aFileThatIsNoChartIsRefused() throws IOException {
        CommandLineRun.of("import", chart("nothing here")).isRefusedFor("maker.csv", "headings");
        CommandLineRun.of("import", folder.resolve("none.csv").toString()).isRefusedFor("none.csv", "exist");
    }

    private String chart(String text) throws IOException {
        return Files.writeString(folder.resolve("maker.csv"), text).toString();
    }

    private static List<String> files(Path of) throws IOException {
        try (Stream<Path> files = Files.list(of)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
