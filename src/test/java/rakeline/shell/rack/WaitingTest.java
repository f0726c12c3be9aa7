package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import rakeline.figure.paint.Palette;
import rakeline.shell.OnAScreen;
import rakeline.shell.look.Look;
import rakeline.study.Progress;

/** What is computed for long, and calling it off. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class WaitingTest {
    private final AtomicBoolean calledOff = new AtomicBoolean();
    private Waiting waiting;

    @BeforeEach
    void begin() {
        waiting = GuiActionRunner.execute(() -> new Waiting(new Look(Palette.LIGHT, 1), () -> calledOff.set(true)));
    }

    private Progress begun() {
        return GuiActionRunner.execute(waiting::begin);
    }

    private static void await(String what, BooleanSupplier holds) {
        Pause.pause(new Condition(what) {
            @Override
            public boolean test() {
                return GuiActionRunner.execute(holds::getAsBoolean);
            }
        });
    }

    @Test
    void whatTakesLongComesIntoSight() {
        begun();
        await("it is in sight", waiting::isVisible);
    }

    @Test
    void whatHasEndedIsOutOfSightAndGoesOnNoMore() {
        Progress progress = begun();
        await("it is in sight", waiting::isVisible);
        GuiActionRunner.execute(() -> waiting.end());
        assertThat(waiting.isVisible()).isFalse();
        assertThat(progress.goesOn(0.5)).isFalse();
    }

    @Test
    void whatIsBegunLaterCallsOffWhatWentOnBefore() {
        Progress first = begun();
        Progress second = begun();
        assertThat(first.goesOn(0.5)).isFalse();
        assertThat(second.goesOn(0.5)).isTrue();
    }

    @Test
    void theKeyCallsOff() {
        Progress progress = begun();
        GuiActionRunner.execute(() -> waiting.stopKey().doClick());
        assertThat(calledOff).isTrue();
        assertThat(progress.goesOn(0.5)).isFalse();
    }
}
