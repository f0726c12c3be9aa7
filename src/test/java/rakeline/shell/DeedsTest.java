package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Whatever can be done has a key, a name, and a place in a menu. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class DeedsTest {
    @TempDir
    static Path home;

    private static OpenWindow window;

    @BeforeAll
    static void open() {
        window = OpenWindow.sized(home, 1366, 768).with(Samples.slackHeadAngles());
    }

    @AfterAll
    static void close() {
        window.close();
    }

    @Test
    void everythingHasAKey() {
        assertThat(deeds()).filteredOn(deed -> deed.key().isEmpty()).isEmpty();
    }

    @Test
    void noTwoHaveTheSameKey() {
        Map<KeyStroke, List<String>> byKey = deeds().stream()
                .collect(Collectors.groupingBy(
                        deed -> deed.key().orElseThrow(), Collectors.mapping(Deed::words, Collectors.toList())));
        assertThat(byKey.values()).allMatch(words -> words.size() == 1);
    }

    @Test
    void noTwoHaveTheSameWords() {
        assertThat(deeds().stream().map(Deed::words)).doesNotHaveDuplicates();
    }

    @Test
    void everyMenuItemHasAnAccessibleName() {
        assertThat(items())
                .isNotEmpty()
                .noneMatch(
                        item -> item.getAccessibleContext().getAccessibleName().isBlank());
    }

    @Test
    void theMenusHoldWhatCanBeDone() {
        assertThat(items().map(JMenuItem::getText))
                .containsExactlyElementsOf(deeds().stream().map(Deed::words).toList());
    }

    @Test
    void everyMenuItemShowsItsKey() {
        assertThat(items()).allMatch(item -> item.getAccelerator() != null);
    }

    private static List<Deed> deeds() {
        return window.window().allDeeds();
    }

    private static Stream<JMenuItem> items() {
        return Stream.of(window.window().frame().getJMenuBar().getSubElements())
                .map(JMenu.class::cast)
                .flatMap(menu -> Stream.of(menu.getMenuComponents()))
                .map(JMenuItem.class::cast);
    }
}
