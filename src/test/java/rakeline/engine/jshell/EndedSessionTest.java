package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import rakeline.engine.Session;

/** Nobody waits for a session that has ended. */
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
}
