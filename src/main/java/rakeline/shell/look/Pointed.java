package rakeline.shell.look;

import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** What help is to be opened at, as parts of the window say it of themselves. */
public final class Pointed {
    private static final Object TOPIC = new Object();

    private Pointed() {}

    /** Lets a part of the window say what help to open at: a key, a constant, a word of a row, or the name of a topic. */
    public static void at(JComponent part, Supplier<String> topic) {
        part.putClientProperty(TOPIC, topic);
    }

    /** What a part, or what it stands in, says; the innermost counts that says something. */
    public static Optional<String> of(Component part) {
        return Stream.iterate(part, each -> each != null, Component::getParent)
                .filter(JComponent.class::isInstance)
                .flatMap(each -> said((JComponent) each).stream())
                .findFirst();
    }

    private static Optional<String> said(JComponent part) {
        return part.getClientProperty(TOPIC) instanceof Supplier<?> topic
                ? Optional.of(topic.get().toString()).filter(words -> !words.isBlank())
                : Optional.empty();
    }

    /** The innermost part under a place of another. */
    public static Component deepest(Container root, Point place) {
        return SwingUtilities.getDeepestComponentAt(root, place.x, place.y);
    }
}
