package rakeline.shell.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The search of the help. */
class TopicTest {
    private static final Topic TRAIL = new Topic(
            List.of("trailMm", "TRAIL"), "Trail · trailMm", "# Trail\n\nFrom the steering axis to the contact.");
    private static final Topic FLOP = new Topic(
            List.of("wheelFlopMm"),
            "Wheel flop · wheelFlopMm",
            "# Wheel flop\n\nThe drop of the front end \\(trail too\\).");
    private static final List<Topic> ALL = List.of(FLOP, TRAIL);

    @Test
    void whatIsCalledSoComesBeforeWhatSpeaksOfIt() {
        assertThat(Topic.find(ALL, "trail")).containsExactly(TRAIL, FLOP);
    }

    @Test
    void theTextIsSearchedToo() {
        assertThat(Topic.find(ALL, "steering axis")).containsExactly(TRAIL);
    }

    @Test
    void wordsNeedNotStandTogether() {
        assertThat(Topic.find(ALL, "front drop")).containsExactly(FLOP);
    }

    @Test
    void signsThatOnlySetTheTextHideNothing() {
        assertThat(Topic.find(ALL, "(trail too)")).containsExactly(FLOP);
    }

    @Test
    void noWordsFindAll() {
        assertThat(Topic.find(ALL, " ")).isEqualTo(ALL);
    }
}
