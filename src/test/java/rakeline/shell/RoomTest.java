package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JSlider;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.desk.Preferences;
import rakeline.desk.Preferences.Theme;
import rakeline.shell.figures.FigureView;

/** Everything has the room that it needs, and a name for those who do not see it. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class RoomTest {
    @TempDir
    Path home;

    @ParameterizedTest
    @CsvSource({"1024, 768, 100, LIGHT", "1366, 768, 100, DARK", "1920, 1000, 100, CONTRAST", "1920, 1000, 200, LIGHT"})
    void nothingIsClipped(int width, int height, int percent, Theme theme) {
        Preferences preferences = Preferences.standard().withTheme(theme).withTypePercent(percent);
        try (OpenWindow window =
                OpenWindow.preferring(home, preferences, width, height).with(Samples.slackHeadAngles())) {
            assertThat(window.shown().stream().filter(RoomTest::isClipped).map(RoomTest::words))
                    .isEmpty();
        }
    }

    @Test
    void everyControlHasAnAccessibleName() {
        try (OpenWindow window = OpenWindow.sized(home, 1920, 1000).with(Samples.slackHeadAngles())) {
            assertThat(window.shown().stream()
                            .filter(RoomTest::isControl)
                            .filter(component -> nameOf(component).isEmpty())
                            .map(component -> component.getClass() + " " + component.getName()))
                    .isEmpty();
        }
    }

    @Test
    void theKeysOfTheViewsStayInSightInLargeTypeOnASmallScreen() {
        Preferences large = Preferences.standard().withTypePercent(200);
        try (OpenWindow window = OpenWindow.preferring(home, large, 1024, 768).with(Samples.slackHeadAngles())) {
            Component show = window.frame().button("show figure").target();
            int right = SwingUtilities.convertPoint(
                            show, show.getWidth(), 0, window.window().frame())
                    .x;
            assertThat(right).isLessThanOrEqualTo(1024);
        }
    }

    @Test
    void aFigureSpansBothColumnsWhereThereIsLittleRoom() {
        try (OpenWindow window = OpenWindow.sized(home, 1024, 768).with(Samples.slackHeadAngles())) {
            List<Integer> widths = window.shown().stream()
                    .filter(FigureView.class::isInstance)
                    .map(Component::getWidth)
                    .toList();
            assertThat(widths).isNotEmpty().allMatch(width -> width > 800);
        }
    }

    @Test
    void theDrawingIsATabWhereThereIsLittleRoomOneKeyFromTheRackToo() {
        try (OpenWindow window = OpenWindow.sized(home, 1024, 768).with(Samples.slackHeadAngles())) {
            window.choose("Rack", "Rack");
            window.choose("View", "Drawing");
            assertThat(window.shown())
                    .anyMatch(SidePane.class::isInstance)
                    .noneMatch(component -> component instanceof rakeline.shell.ledger.Ledger);
        }
    }

    private static boolean isClipped(Component component) {
        boolean words =
                component instanceof JLabel || component instanceof AbstractButton || component instanceof JTextField;
        Dimension wanted = component.getPreferredSize();
        boolean small = component.getWidth() < wanted.width || component.getHeight() < wanted.height;
        return words && !words(component).isBlank() && small && !mayShorten(component);
    }

    /** The title, what was said last and a folded snippet may end in dots. */
    private static boolean mayShorten(Component component) {
        return List.of("title", "about", "said", "first line").contains(String.valueOf(component.getName()));
    }

    private static String words(Component component) {
        if (component instanceof JLabel label) {
            return label.getText();
        }
        return component instanceof AbstractButton button
                ? String.valueOf(button.getText())
                : component instanceof JTextComponent text ? text.getText() : "";
    }

    private static boolean isControl(Component component) {
        return component.isFocusable() && isOfAKindToUse(component);
    }

    private static boolean isOfAKindToUse(Component component) {
        return component instanceof AbstractButton
                || component instanceof JSlider
                || component instanceof JComboBox
                || component instanceof FigureView
                || component instanceof JTextComponent;
    }

    private static String nameOf(Component component) {
        String name = component.getAccessibleContext().getAccessibleName();
        return name == null ? "" : name;
    }
}
