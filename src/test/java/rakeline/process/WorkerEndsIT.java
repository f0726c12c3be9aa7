package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No worker outlives the command that started it. */
class WorkerEndsIT {
    private static final long PATIENCE_SECONDS = 20;

    @TempDir
    Path folder;

    @Test
    void theWorkerEndsWithTheCommand() throws Exception {
        Path mark = folder.resolve("pid");
        Pages.write(folder.resolve("page.rakeline"), Pages.leave(mark));
        Program.in(folder).run("run", "page.rakeline").isDone();
        assertEnded(Long.parseLong(Files.readString(mark)));
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void theWorkerOfAnEndlessRowEndsWithACommandThatIsKilled(boolean byForce) throws Exception {
        Path mark = folder.resolve("pid");
        Pages.write(folder.resolve("page.rakeline"), Pages.leave(mark), "while (true) {}");
        Process command = Program.in(folder).start(folder, "run", "page.rakeline");
        long worker = awaitPid(command, mark);
        assertThat(ProcessHandle.of(worker)).isPresent();
        if (byForce) {
            command.destroyForcibly();
        } else {
            command.destroy();
        }
        assertEnded(worker);
        assertThat(command.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
    }

    private static long awaitPid(Process command, Path mark) throws IOException, InterruptedException {
        while (!Files.exists(mark) || Files.size(mark) == 0) {
            assertThat(command.waitFor(20, TimeUnit.MILLISECONDS)).isFalse();
        }
        return Long.parseLong(Files.readString(mark));
    }

    private static void assertEnded(long pid) throws Exception {
        ProcessHandle handle = ProcessHandle.of(pid).orElse(null);
        if (handle != null) {
            handle.onExit().get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        }
    }
}
