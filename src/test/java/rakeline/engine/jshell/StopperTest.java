package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import rakeline.engine.PageRow;
import rakeline.engine.RowSource;

/** A stop reaches the row that it was meant for, until it is heard, and no other. */
class StopperTest {
    private static final Duration LONG = Duration.ofHours(1);
    private static final int PATIENCE_SECONDS = 30;

    /** What runs a row, and notes what is done to it. */
    private static class Noting implements Stopper.Target {
        private final CountDownLatch interrupts;
        private final CountDownLatch killed = new CountDownLatch(1);

        Noting(int interruptsAwaited) {
            interrupts = new CountDownLatch(interruptsAwaited);
        }

        @Override
        public void interrupt() {
            interrupts.countDown();
        }

        @Override
        public void kill() {
            killed.countDown();
        }

        boolean isInterrupted() throws InterruptedException {
            return interrupts.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        }

        boolean isKilled() throws InterruptedException {
            return killed.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        }
    }

    private final Stopper stopper = new Stopper();
    private final Noting target = new Noting(1);

    @AfterEach
    void close() {
        stopper.close();
    }

    private static PageRow row(String id) {
        return new PageRow(1, Pages.row(id, "1"), new RowSource("1", List.of()));
    }

    private void arm(Noting another, Duration limit) {
        stopper.arm(row("r"), another, limit);
        stopper.entersWorker();
    }

    @Test
    void aRowIsStoppedAtItsTimeLimit() throws InterruptedException {
        arm(target, Duration.ofMillis(1));
        assertThat(target.isInterrupted()).isTrue();
        assertThat(stopper.cause()).contains(Stopper.Cause.TIME_LIMIT);
    }

    @Test
    void aStopIsRepeatedUntilItIsHeard() throws InterruptedException {
        Noting deaf = new Noting(3);
        arm(deaf, LONG);
        stopper.stop(Stopper.Cause.ASKED);
        assertThat(deaf.isInterrupted()).isTrue();
    }

    @Test
    void aDeafRowsWorkerIsKilled() throws InterruptedException {
        arm(target, LONG);
        stopper.stop(Stopper.Cause.ASKED);
        assertThat(target.isKilled()).isTrue();
    }

    @Test
    void aWorkerThatCannotBeAskedIsKilled() throws InterruptedException {
        Noting broken = new Noting(2) {
            @Override
            public void interrupt() {
                super.interrupt();
                throw new IllegalThreadStateException("no such thread");
            }
        };
        arm(broken, LONG);
        stopper.stop(Stopper.Cause.ASKED);
        assertThat(broken.isInterrupted()).isTrue();
        assertThat(broken.isKilled()).isTrue();
    }

    @Test
    void theTimeLimitOfARowThatWasStoppedIsNoOthers() throws InterruptedException {
        long limit = TimeUnit.MILLISECONDS.toNanos(400);
        arm(target, Duration.ofMillis(100));
        stopper.stop(Stopper.Cause.ASKED);
        assertThat(target.isInterrupted()).isTrue();
        long begun = System.nanoTime();
        Noting next = new Noting(1);
        arm(next, Duration.ofNanos(limit));
        assertThat(next.isInterrupted()).isTrue();
        assertThat(System.nanoTime() - begun).isGreaterThanOrEqualTo(limit);
    }

    @Test
    void aStopThatComesWhenTheRowHasEndedStopsNothing() {
        arm(target, LONG);
        stopper.disarm();
        stopper.stop(Stopper.Cause.ASKED);
        arm(new Noting(1), LONG);
        assertThat(stopper.cause()).isEmpty();
    }

    @Test
    void aStopMeantForAnotherRowStopsNothing() {
        arm(target, LONG);
        stopper.stop(Stopper.Cause.EDITED, row -> row.id().equals("another"));
        assertThat(stopper.cause()).isEmpty();
    }
}
