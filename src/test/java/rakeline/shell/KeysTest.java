package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.stream.Stream;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

class KeysTest {
    @Test
    void thePlatformsOwnKeyStandsForControl() {
        assertThat(Keys.stroke("ctrl shift S", InputEvent.META_DOWN_MASK))
                .isEqualTo(
                        KeyStroke.getKeyStroke(KeyEvent.VK_S, InputEvent.META_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK));
    }

    @Test
    void aKeyWithoutControlIsTheSameEverywhere() {
        assertThat(Keys.stroke("alt UP", InputEvent.META_DOWN_MASK)).isEqualTo(KeyStroke.getKeyStroke("alt UP"));
    }

    @Test
    void aSignReadsAsItStandsOnItsKey() {
        assertThat(Stream.of("ctrl COMMA", "ctrl EQUALS", "ctrl PLUS", "ctrl SLASH")
                        .map(key -> Keys.words(KeyStroke.getKeyStroke(key))))
                .extracting(words -> words.substring(words.length() - 2))
                .containsExactly("+,", "+=", "++", "+/");
    }
}
