package rakeline.shell.figures;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import rakeline.figure.Chart;
import rakeline.quantity.Numbers;

/** Where a person points on one chart of a window, every chart over the same quantity points too. */
final class Pointing {
    private final Set<FigureView> figures = new LinkedHashSet<>();

    /** That of the window in which a figure stands; none where it stands in none. */
    static Optional<Pointing> of(FigureView figure) {
        return Optional.ofNullable(SwingUtilities.getRootPane(figure)).map(Pointing::of);
    }

    private static Pointing of(JRootPane root) {
        Object known = root.getClientProperty(Pointing.class);
        if (known instanceof Pointing pointing) {
            return pointing;
        }
        Pointing fresh = new Pointing();
        root.putClientProperty(Pointing.class, fresh);
        return fresh;
    }

    void add(FigureView figure) {
        figures.add(figure);
    }

    void remove(FigureView figure) {
        figures.remove(figure);
    }

    /** The others point where this one does, or nowhere. */
    void point(FigureView from) {
        from.chart().ifPresent(chart -> {
            int step = from.view().step();
            List.copyOf(figures).stream()
                    .filter(figure -> figure != from)
                    .filter(figure -> figure.chart()
                            .filter(other -> other.x().key().equals(chart.x().key()))
                            .isPresent())
                    .forEach(figure -> follow(figure, chart, step));
        });
    }

    private static void follow(FigureView figure, Chart from, int step) {
        int own = step < 0
                ? -1
                : nearest(figure.chart().orElseThrow().steps(), from.steps().at(step));
        figure.follow(own < 0 ? figure.view().withoutCrosshair() : figure.view().at(own));
    }

    /** The step nearest to a value; -1 where the value lies beyond both ends. */
    static int nearest(Numbers steps, double value) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        boolean below = false;
        boolean above = false;
        for (int i = 0; i < steps.size(); i++) {
            below |= steps.at(i) <= value;
            above |= steps.at(i) >= value;
            double apart = Math.abs(steps.at(i) - value);
            if (apart < least) {
                least = apart;
                nearest = i;
            }
        }
        return below && above ? nearest : -1;
    }
}
