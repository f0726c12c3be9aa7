package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar in a folder whose name has a blank and an accent, without a display. */
class SpacedFolderIT {
    @TempDir
    static Path temporary;

    private static Path folder;
    private static Program program;

    @BeforeAll
    static void copyTheJar() throws IOException {
        folder = Files.createDirectory(temporary.resolve("sp ace é"));
        Path jar = Files.copy(Path.of(System.getProperty("rakeline.jar")), folder.resolve("rakeline.jar"));
        program = Program.in(folder).from(jar);
    }

    @Test
    void aWorksheetRuns() {
        Pages.write(folder.resolve("zwölf.rakeline"), "int twelve = 5 + 7;");
        assertThat(program.run("run", "zwölf.rakeline").isDone().data()).contains("twelve: 12");
    }

    @Test
    void aBundledBikeIsFound() {
        Pages.write(folder.resolve("b.rakeline"), "measure(bike(\"demo-data/bikes/road-m.bike.json\"), TRAIL) > 0");
        assertThat(program.run("run", "b.rakeline").isDone().data()).contains("true");
    }

    @Test
    void openRunsTheWelcomePageAndNamesTheFolderOfItsFigures() throws IOException {
        Path figures = Files.createDirectory(temporary.resolve("figures"));
        String data =
                program.with("-Djava.io.tmpdir=" + figures).run("open").isDone().data();
        Path named = only(figures);
        assertThat(data).contains("The figures are in " + named + ".");
        assertThat(named).isDirectoryContaining("glob:**.svg").isDirectoryContaining("glob:**.csv");
    }

    @Test
    void openWithAFilePointsToRun() {
        Pages.write(folder.resolve("page.rakeline"), "1 + 1");
        program.run("open", "page.rakeline").isRefusedFor("no display", "run page.rakeline");
    }

    @Test
    void aFileAloneIsOpened() {
        Pages.write(folder.resolve("alone.rakeline"), "1 + 1");
        program.run("alone.rakeline").isRefusedFor("no display", "run alone.rakeline");
    }

    private static Path only(Path parent) throws IOException {
        try (Stream<Path> children = Files.list(parent)) {
            return children.filter(Files::isDirectory)
                    .filter(child -> child.getFileName().toString().startsWith("rakeline-welcome"))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
