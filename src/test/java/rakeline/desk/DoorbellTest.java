package rakeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A second start reaches the window that is open. */
class DoorbellTest {
    @TempDir
    Path home;

    private final BlockingQueue<Optional<Path>> visits = new LinkedBlockingQueue<>();

    @Test
    void nobodyAnswersWhereNoWindowIsOpen() {
        assertThat(Doorbell.ring(Places.in(home), Optional.empty())).isFalse();
    }

    @Test
    void theOpenWindowIsToldTheFile() throws InterruptedException {
        Path file = home.resolve("Größe ä.rakeline").toAbsolutePath();
        try (Doorbell bell = Doorbell.hang(Places.in(home), visits::add).orElseThrow()) {
            assertThat(bell).isNotNull();
            assertThat(Doorbell.ring(Places.in(home), Optional.of(file))).isTrue();
            assertThat(visits.poll(10, TimeUnit.SECONDS)).contains(file);
        }
    }

    @Test
    void aStartWithoutAFileAsksForTheWindowAlone() throws InterruptedException {
        try (Doorbell bell = Doorbell.hang(Places.in(home), visits::add).orElseThrow()) {
            assertThat(bell).isNotNull();
            assertThat(Doorbell.ring(Places.in(home), Optional.empty())).isTrue();
            assertThat(visits.poll(10, TimeUnit.SECONDS)).isEmpty();
        }
    }

    @Test
    void aClosedWindowAnswersNoMore() {
        Doorbell.hang(Places.in(home), visits::add).orElseThrow().close();
        assertThat(Doorbell.ring(Places.in(home), Optional.empty())).isFalse();
    }

    @Test
    void aSocketLeftByAKilledWindowIsReplaced() throws InterruptedException {
        Doorbell first = Doorbell.hang(Places.in(home), ignored -> {}).orElseThrow();
        try (Doorbell second = Doorbell.hang(Places.in(home), visits::add).orElseThrow()) {
            assertThat(second).isNotSameAs(first);
            assertThat(Doorbell.ring(Places.in(home), Optional.empty())).isTrue();
            assertThat(visits.poll(10, TimeUnit.SECONDS)).isEmpty();
        }
        first.close();
    }
}
