package rakeline.shell.figures;

import java.util.Optional;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;

/** The dials of a page, as a hand on a figure moves them. */
public interface Handles {
    /** A dial that is bound to an input: its name, and where it stands. */
    record Bound(String label, double value) {}

    /** The dial that is bound to an input; none where the page has none. */
    Optional<Bound> bound(String key);

    /** Moves it to the nearest of its places. */
    void move(String key, double value);

    /** The hand lets go. */
    void rest();

    /** Says what hands on the figures of a window move. */
    static void in(JRootPane window, Handles handles) {
        window.putClientProperty(Handles.class, handles);
    }

    /** Those of the window in which a figure stands. */
    static Optional<Handles> of(FigureView figure) {
        return Optional.ofNullable(SwingUtilities.getRootPane(figure))
                .map(root -> (Handles) root.getClientProperty(Handles.class));
    }
}
