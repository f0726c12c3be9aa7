package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rakeline.engine.Session;
import rakeline.engine.State;

/** A row that reads a file follows it. */
@Tag("process")
class FilesTest {
    private static final String BIKE = "bike(\"mine.bike.json\").name()";

    @TempDir
    Path folder;

    private Running page;

    @BeforeEach
    void open() {
        page = new Running(Session.Settings.standard().withoutStandby().in(folder));
    }

    @AfterEach
    void close() {
        page.close();
    }

    @Test
    void aRowRunsAgainWhenTheFileThatItReadChanges() throws IOException, InterruptedException {
        write("Before");
        page.run("String name = " + BIKE + ";", "name + \"!\"");
        page.forgetSaid();
        write("After");
        page.await("r2", State.FRESH);
        assertThat(page.settle().value("r2")).isEqualTo("\"After!\"");
    }

    @Test
    void aRowThatMissedAFileRunsOnceItIsThere() throws IOException, InterruptedException {
        assertThat(page.run(BIKE).state("r1")).isEqualTo(State.FAILED);
        page.forgetSaid();
        write("Late");
        page.await("r1", State.FRESH);
        assertThat(page.settle().value("r1")).isEqualTo("\"Late\"");
    }

    @Test
    void aWaitingRowIsOutOfDateWhenItsFileChanges() throws IOException, InterruptedException {
        write("Before");
        page.run(Pages.of(Pages.waiting("r1", BIKE)));
        page.session().runRow("r1");
        page.settle();
        page.forgetSaid();
        write("After");
        page.await("r1", State.OUT_OF_DATE);
        assertThat(page.settle().state("r1")).isEqualTo(State.OUT_OF_DATE);
    }

    private void write(String name) throws IOException {
        try (InputStream in = Session.class.getResourceAsStream("/rakeline/bundled/demo-data/bikes/road-m.bike.json")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            Files.writeString(
                    folder.resolve("mine.bike.json"),
                    text.replaceFirst("\"name\": *\"[^\"]*\"", "\"name\": \"" + name + "\""));
        }
    }
}
