package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import rakeline.Main;

/** Ctrl+C, as a process of its own gets it. */
@Tag("process")
class InterruptionTest {
    private static final Duration AT_WORK = Duration.ofSeconds(3);

    @TempDir
    private Path folder;

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aLongCommandEndsWithOneSentenceAndLeavesNoFile() throws IOException, InterruptedException {
        Path csv = Files.createDirectory(folder.resolve("files")).resolve("sweep.csv");
        Process process = start(
                "sweep",
                "demo-data/bikes/road-xs.bike.json",
                "--vary",
                "frame.headAngleDeg=50:85:0.0005",
                "--track",
                "trailMm,toeRoomMm",
                "--csv",
                csv.toString());
        while (process.info().totalCpuDuration().orElse(AT_WORK).compareTo(AT_WORK) < 0) {
            assertThat(process.waitFor(50, TimeUnit.MILLISECONDS)).as("ended").isFalse();
        }
        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isEqualTo(130);
        assertThat(Files.readString(folder.resolve("out"))).isEmpty();
        assertThat(Files.readString(folder.resolve("err")))
                .isEqualTo(
                        "sweep was stopped before it was done; no file is left half written." + System.lineSeparator());
        assertThat(folder.resolve("files")).isEmptyDirectory();
    }

    private Process start(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Drakeline.home=" + folder.resolve("home"),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out").toFile())
                .redirectError(folder.resolve("err").toFile())
                .start();
    }
}
