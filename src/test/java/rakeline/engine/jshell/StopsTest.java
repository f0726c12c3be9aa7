package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rakeline.engine.State;

/** A stop ends the run that it was meant for; whenever it comes, no later run is touched. */
@Tag("process")
class StopsTest {
    private static final int ROUNDS = 60;

    @RegisterExtension
    static final Running page = Running.standard();

    @Test
    void aStopOfAShortRowReachesNoLaterRun() throws InterruptedException {
        for (int i = 0; i < ROUNDS; i++) {
            page.session().show(Pages.of("long n = 0;\nwhile (n < " + i * 100_000L + ") n++;"));
            page.session().stop();
            page.settle();
            assertThat(page.run("1 + " + i).value("r1")).isEqualTo(Integer.toString(1 + i));
        }
    }

    @Test
    void stopsThatComeWhileARowPrintsLeaveWholeFrames() throws InterruptedException {
        for (int i = 0; i < ROUNDS / 4; i++) {
            page.forgetSaid();
            page.session().show(Pages.of("for (int i = " + i + "; true; i++) System.out.println(i);"));
            page.await("r1", State.RUNNING);
            page.session().stop();
            assertThat(page.settle().message("r1")).isEqualTo("This row was stopped.");
        }
    }
}
