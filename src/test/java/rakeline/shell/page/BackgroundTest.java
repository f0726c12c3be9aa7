package rakeline.shell.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import rakeline.quantity.Refusal;

/** Work aside ends with exactly one word of what came of it. */
class BackgroundTest {
    private final Background background = new Background("aside");

    @AfterEach
    void close() {
        background.close();
    }

    private String said(Supplier<String> work) throws Exception {
        CompletableFuture<String> said = new CompletableFuture<>();
        background.run(work, done -> said.complete("done: " + done), sentence -> said.complete("refused: " + sentence));
        return said.get(10, TimeUnit.SECONDS);
    }

    private static String fail(Throwable failure) {
        if (failure instanceof Error error) {
            throw error;
        }
        throw (RuntimeException) failure;
    }

    @Test
    void whatCameOfItIsTold() throws Exception {
        assertThat(said(() -> "seven")).isEqualTo("done: seven");
    }

    @Test
    void aRefusalIsTold() throws Exception {
        assertThat(said(() -> fail(new Refusal("no such file.")))).isEqualTo("refused: no such file.");
    }

    @Test
    void aFailureThatNobodyExpectedIsTold() throws Exception {
        assertThat(said(() -> fail(new IllegalStateException("broken"))))
                .isEqualTo("refused: This could not be done, because something in Rakeline itself went wrong"
                        + " (IllegalStateException).");
    }

    @Test
    void anErrorOfTheMachineIsTold() throws Exception {
        assertThat(said(() -> fail(new OutOfMemoryError("heap")))).contains("OutOfMemoryError");
    }

    @Test
    void workGoesOnAfterAFailure() throws Exception {
        said(() -> fail(new IllegalStateException("broken")));
        assertThat(said(() -> "seven")).isEqualTo("done: seven");
    }

    @Test
    void ofWorkThatWasCalledOffNothingIsTold() throws Exception {
        CompletableFuture<String> said = new CompletableFuture<>();
        background.run(() -> fail(new CancellationException()), said::complete, said::complete);
        background.await();
        SwingUtilities.invokeAndWait(() -> {});
        assertThat(said).isNotDone();
    }
}
