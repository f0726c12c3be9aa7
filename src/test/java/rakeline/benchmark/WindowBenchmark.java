package rakeline.benchmark;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import rakeline.catalogue.Roots;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.Session;
import rakeline.engine.jshell.Sessions;
import rakeline.figure.Chart;
import rakeline.figure.paint.Palette;
import rakeline.geometry.Inputs;
import rakeline.prelude.Prelude;
import rakeline.shell.ledger.CodeHelp;
import rakeline.shell.ledger.Ledger;
import rakeline.shell.look.Look;
import rakeline.shell.page.Bench;
import rakeline.shell.page.Origin;
import rakeline.study.Vocabulary;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/**
 * What the event thread does for a page of 1280 × 800 pixels, beside the 16.7 ms of a frame at 60 Hz. Needs a display.
 */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.AverageTime, Mode.SampleTime})
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class WindowBenchmark {
    private static final int LONG = 200;
    private static final int CHARTS = 60;
    private static final int POSITIONS = 20;

    private final BufferedImage screen = new BufferedImage(1280, 800, BufferedImage.TYPE_INT_RGB);
    private final Look look = new Look(Palette.LIGHT, 1);
    private final List<Chart> charts = new ArrayList<>();
    private CodeHelp help;
    private Sheet page;
    private Sheet longPage;
    private int turn;

    @Setup
    public void open() throws InterruptedException, InvocationTargetException {
        help = new CodeHelp(Vocabulary.standard(), Sessions::suggestions, folder -> Roots.bundled());
        for (int i = 0; i < POSITIONS; i++) {
            var bike = DemoBikes.read("road-xs").with(Inputs.HEAD_ANGLE, 69 + 0.2 * i);
            charts.add(Prelude.sweep(bike)
                    .over(Inputs.HEAD_ANGLE, 69, 74)
                    .track("trailMm", "wheelbaseMm", "toeRoomMm")
                    .chart());
        }
        page = new Sheet(page(10, 2));
        longPage = new Sheet(page(LONG, CHARTS));
    }

    @TearDown
    public void close() throws InterruptedException, InvocationTargetException {
        page.close();
        longPage.close();
        help.close();
    }

    /** A dial has moved, its two charts of three panels are there, and all is laid out and painted. */
    @Benchmark
    public BufferedImage dialMovedAndPainted() throws InterruptedException, InvocationTargetException {
        return page.turnTo(turn++ % POSITIONS);
    }

    /** The same on a page of 200 rows with 60 charts, of which a screenful is painted. */
    @Benchmark
    public BufferedImage dialMovedOnALongPage() throws InterruptedException, InvocationTargetException {
        return longPage.turnTo(turn++ % POSITIONS);
    }

    /** What is in sight, painted again. */
    @Benchmark
    public BufferedImage painted() throws InterruptedException, InvocationTargetException {
        return page.paint();
    }

    /** The long page scrolled by a tenth of a screen. */
    @Benchmark
    public BufferedImage longPageScrolled() throws InterruptedException, InvocationTargetException {
        return longPage.scroll(80);
    }

    /** The long page from its worksheet to the first picture. */
    @Benchmark
    public BufferedImage longPageOpened() throws InterruptedException, InvocationTargetException {
        new Sheet(page(LONG, CHARTS)).close();
        return screen;
    }

    private static Worksheet page(int rows, int figures) {
        List<Row> all = IntStream.range(0, rows)
                .<Row>mapToObj(i -> i % (rows / figures) == 1
                        ? Row.Snippet.of("chart" + i, "sweep(it).over(HEAD_ANGLE, 69, 74).track(TRAIL).chart()")
                        : i % 2 == 0
                                ? new Row.Note("note" + i, "Some words on what *follows*, number " + i + ".")
                                : Row.Snippet.of("value" + i, "double value" + i + " = " + i + ";"))
                .toList();
        return Worksheet.empty("Benchmark").withRows(all);
    }

    /** A page on a bench, seen through a viewport; all of it on the event thread. */
    private final class Sheet {
        private final Bench bench = new Bench(settings -> new Answering(), Session.Settings::standard);
        private final JFrame frame = new JFrame();
        private final JScrollPane scroll;
        private volatile CountDownLatch awaited = new CountDownLatch(1);
        private int y;

        Sheet(Worksheet worksheet) throws InterruptedException, InvocationTargetException {
            JScrollPane[] made = new JScrollPane[1];
            SwingUtilities.invokeAndWait(() -> made[0] = build(worksheet));
            scroll = made[0];
            awaited.await();
            paint();
        }

        private JScrollPane build(Worksheet worksheet) {
            Ledger ledger = new Ledger(look, bench, help);
            JScrollPane seen = new JScrollPane(ledger);
            seen.setPreferredSize(new Dimension(screen.getWidth(), screen.getHeight()));
            frame.setContentPane(seen);
            frame.pack();
            bench.watch(ledger);
            bench.watch(now -> {
                if (now.progress().isEmpty() && !now.standings().isEmpty()) {
                    awaited.countDown();
                }
            });
            bench.open(worksheet, new Origin.New(), true);
            return seen;
        }

        BufferedImage turnTo(int position) throws InterruptedException, InvocationTargetException {
            awaited = new CountDownLatch(1);
            SwingUtilities.invokeAndWait(() -> bench.dial("head", position, "moved"));
            awaited.await();
            return paint();
        }

        BufferedImage scroll(int by) throws InterruptedException, InvocationTargetException {
            y = (y + by) % 4000;
            SwingUtilities.invokeAndWait(() -> scroll.getViewport().setViewPosition(new Point(0, y)));
            return paint();
        }

        BufferedImage paint() throws InterruptedException, InvocationTargetException {
            SwingUtilities.invokeAndWait(() -> {
                frame.validate();
                Graphics2D pen = screen.createGraphics();
                scroll.paint(pen);
                pen.dispose();
            });
            return screen;
        }

        void close() throws InterruptedException, InvocationTargetException {
            bench.close();
            SwingUtilities.invokeAndWait(frame::dispose);
        }
    }

    /** A session whose charts are there already. */
    private final class Answering implements Session {
        private java.util.function.Consumer<Event> listener = event -> {};
        private Worksheet shown = Worksheet.empty("");

        @Override
        public void listen(java.util.function.Consumer<Event> newListener) {
            listener = newListener;
        }

        @Override
        public void show(Worksheet newPage) {
            shown = newPage;
            dial("head", 0);
        }

        @Override
        public void dial(String name, double value) {
            shown.rows().stream()
                    .filter(row -> row.id().startsWith("chart"))
                    .map(row -> new Outcome(
                            row.id(),
                            "chart",
                            rakeline.engine.State.FRESH,
                            "",
                            "",
                            Optional.of(new Result.Shown(charts.get((int) value))),
                            List.of(),
                            List.of()))
                    .forEach(outcome -> listener.accept(new Event.Row(outcome)));
            listener.accept(new Event.Idle());
        }

        /** Nothing to choose. */
        @Override
        public void pick(String name, String path) {}

        /** Nothing to run. */
        @Override
        public void runRow(String id) {}

        /** Nothing to run. */
        @Override
        public void runFrom(String id) {}

        /** Nothing to run. */
        @Override
        public void runAll() {}

        /** Nothing runs. */
        @Override
        public void stop() {}

        @Override
        public List<Outcome> settle() {
            return List.of();
        }

        /** Nothing to end. */
        @Override
        public void close() {}
    }
}
