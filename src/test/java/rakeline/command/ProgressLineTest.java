package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** What a terminal shows of a long command, on a clock of the test's own. */
class ProgressLineTest {
    private final ByteArrayOutputStream terminal = new ByteArrayOutputStream();
    private final AtomicLong nanos = new AtomicLong();
    private final AtomicBoolean stopped = new AtomicBoolean();

    @Test
    void aShortCommandShowsNothing() {
        ProgressLine line = line(true);
        assertThat(line.goesOn(0.5)).isTrue();
        at(0.9, line, 0.9);
        at(0.95, line, 1);
        assertThat(shown()).isEmpty();
    }

    @Test
    void aLongOneShowsItsShareAndWhatIsLeft() {
        ProgressLine line = line(true);
        at(10, line, 0.25);
        assertThat(shown()).startsWith("\rsweep: 25 %, about 30 s left").doesNotContain("\n");
    }

    @Test
    void theLineIsTakenAwayAtTheEnd() {
        ProgressLine line = line(true);
        at(10, line, 0.5);
        at(20, line, 1);
        assertThat(shown()).endsWith("\r" + " ".repeat(60) + "\r");
        terminal.reset();
        line.clear();
        assertThat(shown()).isEmpty();
    }

    @Test
    void itIsNotWrittenOverMoreThanFourTimesASecond() {
        ProgressLine line = line(true);
        for (int i = 0; i < 1000; i++) {
            at(2 + i / 1000.0, line, 0.5);
        }
        assertThat(shown().chars().filter(c -> c == '\r').count()).isEqualTo(4);
    }

    @Test
    void inAPipeThereIsNothing() {
        ProgressLine line = line(false);
        at(10, line, 0.25);
        at(20, line, 1);
        line.clear();
        assertThat(shown()).isEmpty();
    }

    @Test
    void whatIsStoppedDoesNotGoOnAndShowsNoMore() {
        ProgressLine line = line(true);
        stopped.set(true);
        nanos.set(5_000_000_000L);
        assertThat(line.goesOn(0.2)).isFalse();
        assertThat(shown()).isEmpty();
    }

    private ProgressLine line(boolean watched) {
        PrintStream stream = new PrintStream(terminal, true, StandardCharsets.UTF_8);
        return new ProgressLine("sweep", stream, watched, nanos::get, stopped::get);
    }

    private void at(double seconds, ProgressLine line, double share) {
        nanos.set((long) (seconds * 1e9));
        line.goesOn(share);
    }

    private String shown() {
        return terminal.toString(StandardCharsets.UTF_8);
    }
}
