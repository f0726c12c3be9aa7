package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import rakeline.engine.Session;
import rakeline.worksheet.Row;

/** Nobody waits for a session in vain, also where it has ended. */
@Tag("process")
@Timeout(value = 60, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class EndedSessionTest {
    private final Session session = Sessions.open(Session.Settings.standard().withoutStandby());

    @Test
    void whoeverSettlesAfterTheEndIsToldSo() {
        session.close();
        assertThatThrownBy(session::settle)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("The session has ended: it was closed");
    }

    @Test
    void whoeverSettlesOnceMoreIsToldSoAgain() {
        session.show(Pages.of("1 + 1"));
        session.close();
        assertThatThrownBy(session::settle).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(session::settle).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void aPageOnWhichNothingHasToRunIsDealtWithToo() throws Exception {
        CompletableFuture<Session.Event> idle = new CompletableFuture<>();
        session.listen(event -> {
            if (event instanceof Session.Event.Idle) {
                idle.complete(event);
            }
        });
        session.show(Pages.of(new Row.Note("n1", "No code here.")));
        assertThat(idle.get(30, TimeUnit.SECONDS)).isEqualTo(new Session.Event.Idle());
        session.close();
    }
}
