package rakeline.shell.figures;

import java.awt.event.ActionEvent;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import rakeline.figure.Chart;

/**
 * A figure by keys: left and right move the crosshair from step to step, plus and minus zoom, Escape returns; H takes a
 * handle, which the arrow keys then move.
 */
final class ChartKeys {
    private static final int LEAP = 10;

    private ChartKeys() {}

    static void install(FigureView chart) {
        bind(chart, "H", () -> chart.handle().next());
        bind(chart, "RIGHT", () -> arrow(chart, 1, 0));
        bind(chart, "LEFT", () -> arrow(chart, -1, 0));
        bind(chart, "UP", () -> arrow(chart, 0, -1));
        bind(chart, "DOWN", () -> arrow(chart, 0, 1));
        bind(chart, "PAGE_UP", () -> move(chart, LEAP));
        bind(chart, "PAGE_DOWN", () -> move(chart, -LEAP));
        bind(chart, "PLUS", () -> chart.zoom(1.25, Optional.empty()));
        bind(chart, "ADD", () -> chart.zoom(1.25, Optional.empty()));
        bind(chart, "MINUS", () -> chart.zoom(0.8, Optional.empty()));
        bind(chart, "SUBTRACT", () -> chart.zoom(0.8, Optional.empty()));
        bind(chart, "ESCAPE", () -> back(chart));
    }

    /** A handle that the keys hold goes first. */
    private static void arrow(FigureView figure, int dx, int dy) {
        if (!figure.handle().move(dx, dy) && dx != 0) {
            move(figure, dx);
        }
    }

    private static void back(FigureView figure) {
        if (!figure.handle().letGo()) {
            figure.whole();
        }
    }

    private static void move(FigureView chart, int by) {
        chart.chart().ifPresent(shown -> {
            int from = chart.view().step() < 0
                    ? nearestToHere(shown)
                    : chart.view().step() + by;
            int last = shown.steps().size() - 1;
            chart.look(chart.view().at(Math.max(0, Math.min(last, from))));
        });
    }

    private static int nearestToHere(Chart chart) {
        int nearest = 0;
        for (int i = 1; i < chart.steps().size(); i++) {
            if (Math.abs(chart.steps().at(i) - chart.here())
                    < Math.abs(chart.steps().at(nearest) - chart.here())) {
                nearest = i;
            }
        }
        return nearest;
    }

    private static void bind(FigureView chart, String key, Runnable work) {
        chart.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        chart.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }
        });
    }
}
