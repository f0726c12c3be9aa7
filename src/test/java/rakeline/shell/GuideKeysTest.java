package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guide gives no key that does something else. */
@Tag("window")
class GuideKeysTest {
    /** Keys of a row's text and of lists, which no menu has. */
    private static final List<String> IN_TEXT = List.of("Ctrl+Space", "Ctrl+1, 2, 3", "Shift+F1", "Ctrl+F1", "F3");

    private static final Pattern KEY =
            Pattern.compile("(?:(?:Ctrl|Alt|Shift)\\+)*F\\d{1,2}|(?:(?:Ctrl|Alt|Shift)\\+)+[A-Z](?![a-z])");

    @TempDir
    private Path home;

    private OpenWindow window;

    @BeforeEach
    void openAWindow() {
        window = OpenWindow.sized(home, 1366, 768).with(Samples.slackHeadAngles());
    }

    @AfterEach
    void closeIt() {
        window.close();
    }

    @Test
    void everyKeyOfTheGuideIsOneOfTheMenus() throws IOException {
        Map<String, String> keys = keys();
        for (String topic : List.of("start", "rows", "dials", "views", "writing", "figures", "files", "running")) {
            assertThat(KEY.matcher(text(topic)).results().map(found -> found.group()))
                    .as(topic)
                    .allMatch(key -> keys.containsKey(key) || IN_TEXT.contains(key));
        }
    }

    @Test
    void theKeyOfEarlierVersionsOpensThem() throws IOException {
        assertThat(keys().get("Ctrl+F9")).startsWith("Earlier versions");
        assertThat(text("files").replaceAll("\\s+", " ")).contains("(Earlier versions, Ctrl+F9)");
    }

    private Map<String, String> keys() {
        return OpenWindow.all(((JFrame) window.frame().target()).getJMenuBar())
                .filter(JMenu.class::isInstance)
                .flatMap(menu -> Stream.of(((JMenu) menu).getMenuComponents()))
                .filter(JMenuItem.class::isInstance)
                .map(JMenuItem.class::cast)
                .filter(item -> Objects.nonNull(item.getAccelerator()))
                .collect(Collectors.toMap(
                        item -> Keys.words(item.getAccelerator()), JMenuItem::getText, (one, other) -> one));
    }

    private static String text(String topic) throws IOException {
        try (var in = GuideKeysTest.class.getResourceAsStream("/rakeline/shell/guide/" + topic + ".md")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
