package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThatCode;

import org.junit.jupiter.api.Test;

class RehearsalTest {
    @Test
    void itComesToItsEnd() {
        assertThatCode(Rehearsal::run).doesNotThrowAnyException();
    }
}
