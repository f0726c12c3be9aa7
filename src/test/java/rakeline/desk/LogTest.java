package rakeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogTest {
    private static final Logger LOGGER = Logger.getLogger("rakeline.desk.LogTest");

    @TempDir
    private Path folder;

    @Test
    void whatIsLoggedIsInTheStateFolder() throws IOException {
        assertThat(logged(() -> LOGGER.warning("the worker was slow – 2 s")))
                .contains("WARNING rakeline.desk.LogTest: the worker was slow – 2 s");
    }

    @Test
    void anExceptionIsLoggedWithItsStack() throws IOException {
        assertThat(logged(() -> LOGGER.log(Level.WARNING, "broken", new IllegalStateException("page text"))))
                .contains("java.lang.IllegalStateException", "at ", "LogTest");
    }

    @Test
    void theCauseOfAnExceptionIsLogged() throws IOException {
        Exception cause = new IOException("page text");
        assertThat(logged(() -> LOGGER.log(Level.WARNING, "broken", new IllegalStateException(cause))))
                .contains("java.io.IOException");
    }

    @Test
    void theMessageOfAnExceptionMayHoldThePagesTextAndIsNotLogged() throws IOException {
        assertThat(logged(() -> LOGGER.log(Level.WARNING, "broken", new IllegalStateException("page text"))))
                .doesNotContain("page text");
    }

    @Test
    void aFolderWithAPercentSignIsNoPattern() throws IOException {
        Places places = Places.in(folder.resolve("50%u"));
        logged(places, () -> LOGGER.info("said"));
        assertThat(places.state().resolve("log")).isNotEmptyDirectory();
    }

    private static void logged(Places places, Runnable work) {
        Log log = Log.open(places);
        work.run();
        log.close();
    }

    private String logged(Runnable work) throws IOException {
        Places places = Places.in(folder);
        logged(places, work);
        try (Stream<Path> files = Files.list(places.state().resolve("log"))) {
            return Files.readString(files.findFirst().orElseThrow());
        }
    }
}
