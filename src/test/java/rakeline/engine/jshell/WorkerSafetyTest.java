package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rakeline.engine.Session;

/** What keeps host and worker from harm, and where they can lie. */
@Tag("process")
class WorkerSafetyTest {
    private static final Session.Settings SETTINGS = Session.Settings.standard().withoutStandby();

    @Test
    void aSerialisedObjectInPlaceOfAnAnswerIsNoFrame() throws Exception {
        String tests = Path.of(HostileAgent.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI())
                .toString();
        WorkerLauncher launcher = new WorkerLauncher(SETTINGS, HostileAgent.class.getName(), List.of(tests));
        try (Worker worker = launcher.start()) {
            assertThatThrownBy(() -> worker.invoke(new Worker.Call("A", "b", ""), true, new Printed()))
                    .isInstanceOf(Worker.Lost.class)
                    .hasMessage("sent the program something that it does not understand");
        }
    }

    @Test
    void aWorkerDoesNotOutliveItsHost() throws Exception {
        Process host = host(List.of(), "ProcessHandle.current().pid()");
        long worker = Long.parseLong(firstLine(host));
        host.destroyForcibly();
        ProcessHandle.of(worker)
                .ifPresent(handle -> assertThat(handle.onExit()
                                .orTimeout(5, TimeUnit.SECONDS)
                                .join()
                                .isAlive())
                        .isFalse());
    }

    @Test
    void aProgramInAFolderWithABlankAndAnAccentRunsRows(@TempDir Path temp) throws Exception {
        Path place = Files.createDirectory(temp.resolve("sp ace é"));
        copy(
                Path.of(Session.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI()),
                place);
        Process host = host(List.of(place), "bike(\"demo-data/bikes/endurance-xs.bike.json\").name()");
        assertThat(firstLine(host)).isNotEmpty().doesNotContain("lost");
        host.destroyForcibly();
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path copy = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy);
                }
            }
        }
    }

    /** Another process that runs one row and prints its value, then waits. */
    private static Process host(List<Path> first, String row) throws IOException {
        String path = Stream.concat(
                        first.stream().map(Path::toString), Stream.of(System.getProperty("java.class.path")))
                .reduce((a, b) -> a + File.pathSeparator + b)
                .orElseThrow();
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Dsun.jnu.encoding=UTF-8",
                        "-cp",
                        path,
                        HostOfOneRow.class.getName(),
                        row)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static String firstLine(Process process) throws IOException {
        return process.inputReader(StandardCharsets.UTF_8).readLine();
    }
}
