package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import rakeline.engine.Session;

class HeadStartTest {
    private static final Session.Settings EXPECTED = Session.Settings.standard();

    private final List<Session> begun = new CopyOnWriteArrayList<>();
    private final List<Session> gone = new CopyOnWriteArrayList<>();
    private final CountDownLatch ended = new CountDownLatch(1);
    private final HeadStart ahead = new HeadStart(this::begin, EXPECTED);

    @Test
    void thePageThatWasExpectedTakesTheSessionThatWasBegun() {
        Session taken = ahead.apply(EXPECTED);
        assertThat(begun).hasSize(1).first().isSameAs(taken);
    }

    @Test
    void itIsTakenOnce() {
        assertThat(ahead.apply(EXPECTED)).isNotSameAs(ahead.apply(EXPECTED));
    }

    @Test
    void anotherPageGetsAnotherAndTheOneThatWasBegunEnds() throws InterruptedException {
        Session other = ahead.apply(EXPECTED.in(Path.of("elsewhere")));
        assertThat(ended.await(5, TimeUnit.SECONDS)).isTrue();
        assertThat(gone).hasSize(1).doesNotContain(other);
    }

    @Test
    void oneThatNoPageTookEndsWithTheWindow() throws InterruptedException {
        ahead.close();
        assertThat(ended.await(5, TimeUnit.SECONDS)).isTrue();
        assertThat(gone).isEqualTo(begun);
    }

    private Session begin(Session.Settings settings) {
        Session session = new FakeSession() {
            @Override
            public void close() {
                gone.add(this);
                ended.countDown();
            }
        };
        begun.add(session);
        return session;
    }
}
