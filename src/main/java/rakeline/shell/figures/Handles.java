package rakeline.shell.figures;

import java.awt.Container;
import java.util.Optional;
import javax.swing.JComponent;
import rakeline.figure.paint.Grip;

/** The numbers that a hand on a figure moves: dials of a page, cells of the rack. */
public interface Handles {
    /**
     * A number that a grip stands for.
     *
     * @param label as in {@code the dial “Head angle”}
     * @param value where it stands
     * @param step by which a key moves it
     * @param shown the value with its unit
     */
    record Bound(String label, double value, double step, String shown) {}

    /** The number that a grip stands for; none where there is none. */
    Optional<Bound> bound(Grip grip);

    /** Why a grip stands for none, as a whole sentence. */
    String whyNot(Grip grip);

    /** Where so many steps of a key lead: up for a positive number, down for a negative one. */
    default double along(Grip grip, Bound bound, int steps) {
        return bound.value() + steps * bound.step();
    }

    /** Moves it to the nearest of its places. */
    void move(Grip grip, double value);

    /** The hand lets go. */
    void rest();

    /** Says what hands on the figures in a component move. */
    static void in(JComponent component, Handles handles) {
        component.putClientProperty(Handles.class, handles);
    }

    /** Those of the nearest component that a figure stands in. */
    static Optional<Handles> of(FigureView figure) {
        for (Container at = figure.getParent(); at != null; at = at.getParent()) {
            if (at instanceof JComponent component && component.getClientProperty(Handles.class) != null) {
                return Optional.of((Handles) component.getClientProperty(Handles.class));
            }
        }
        return Optional.empty();
    }
}
