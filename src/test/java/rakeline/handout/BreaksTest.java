package rakeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BreaksTest {
    private static List<Integer> ends(String text) {
        Breaks breaks = new Breaks();
        breaks.setText(text);
        List<Integer> ends = new ArrayList<>();
        for (int end = breaks.next(); end >= 0; end = breaks.next()) {
            ends.add(end);
        }
        return ends;
    }

    @Test
    void aLineMayEndBetweenWords() {
        assertThat(ends("one two three")).containsExactly(4, 8, 13);
    }

    @Test
    void aLineMayEndInAWordThatNoLineCanHold() {
        assertThat(ends("x".repeat(400))).startsWith(60, 120).endsWith(400);
    }

    @Test
    void noLetterIsTornInTwo() {
        String text = "x" + "🚲".repeat(300);
        assertThat(ends(text)).noneMatch(end -> end < text.length() && Character.isLowSurrogate(text.charAt(end)));
    }
}
