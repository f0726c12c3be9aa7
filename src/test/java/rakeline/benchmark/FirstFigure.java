package rakeline.benchmark;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.Window;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.jfree.chart.ChartFactory;
import org.jfree.chart.ChartPanel;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import rakeline.Main;
import rakeline.shell.figures.FigureView;

/**
 * A process that ends once its first figure is on the screen: with {@code page} the program itself on its welcome page,
 * with {@code bare} a window that holds one chart and nothing else. Timed from outside, cold.
 */
public final class FirstFigure {
    private static final int LOOK_EVERY_MS = 5;

    private FirstFigure() {}

    /** Starts one of the two. */
    public static void main(String[] arguments) {
        if ("bare".equals(arguments[0])) {
            EventQueue.invokeLater(FirstFigure::bare);
        } else {
            EventQueue.invokeLater(() -> new Timer(LOOK_EVERY_MS, event -> look()).start());
            Main.main(new String[] {"open"});
        }
    }

    private static void bare() {
        XYSeries trail = new XYSeries("Trail");
        for (int i = 0; i <= 200; i++) {
            trail.add(69 + i * 0.025, 80 - i * 0.16);
        }
        ChartPanel chart = new ChartPanel(
                ChartFactory.createXYLineChart("", "Head angle", "Trail", new XYSeriesCollection(trail)));
        JFrame frame = new JFrame("Bare");
        frame.setContentPane(chart);
        frame.setSize(1366, 768);
        frame.setVisible(true);
        EventQueue.invokeLater(() -> paintAndEnd(chart));
    }

    private static void look() {
        Stream.of(Window.getWindows())
                .filter(Window::isShowing)
                .flatMap(FirstFigure::parts)
                .filter(FigureView.class::isInstance)
                .map(FigureView.class::cast)
                .filter(view -> view.isShowing() && view.figure().isPresent() && view.getHeight() > 0)
                .findFirst()
                .ifPresent(FirstFigure::paintAndEnd);
    }

    private static Stream<Component> parts(Container whole) {
        return Arrays.stream(whole.getComponents())
                .flatMap(part -> Stream.concat(
                        Stream.of(part),
                        Optional.of(part).filter(Container.class::isInstance).map(Container.class::cast).stream()
                                .flatMap(FirstFigure::parts)));
    }

    private static void paintAndEnd(JComponent figure) {
        ((JComponent) SwingUtilities.getRootPane(figure)).paintImmediately(0, 0, 10_000, 10_000);
        Toolkit.getDefaultToolkit().sync();
        Runtime.getRuntime().halt(0);
    }
}
