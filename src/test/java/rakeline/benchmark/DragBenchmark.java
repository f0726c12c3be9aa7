package rakeline.benchmark;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.Window;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.JSlider;
import javax.swing.RepaintManager;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import rakeline.desk.Places;
import rakeline.engine.jshell.Sessions;
import rakeline.figure.Chart;
import rakeline.shell.Shell;
import rakeline.shell.figures.FigureView;

/**
 * A drag of the welcome page's dial through 300 positions, one every sixtieth of a second, in the window itself on a
 * session of its own: how many pictures of the chart were drawn, and how long a position waited at most until it or a
 * later one was drawn. Needs a display.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 1)
@Fork(1)
public class DragBenchmark {
    private static final int POSITIONS = 300;
    private static final long APART_NANOS = 1_000_000_000 / 60;

    /** What was seen in a drag. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Seen {
        /** Pictures of the chart that were drawn. */
        public long drawn;

        /** The longest wait of a position, in milliseconds. */
        public long worstWaitMs;

        /** Starts anew. */
        @Setup(Level.Iteration)
        public void forget() {
            drawn = 0;
            worstWaitMs = 0;
        }
    }

    private record Asked(double value, long at) {}

    private final Deque<Asked> waiting = new ArrayDeque<>();
    private CompletableFuture<Void> closed;
    private JSlider slider;
    private FigureView chart;
    private double shown;
    private long drawn;
    private long worst;

    /** Opens the window and waits for the first chart. */
    @Setup
    public void open() throws IOException, InterruptedException, InvocationTargetException {
        Path home = Files.createTempDirectory("drag");
        EventQueue.invokeAndWait(() -> RepaintManager.setCurrentManager(new RepaintManager() {
            @Override
            public void paintDirtyRegions() {
                super.paintDirtyRegions();
                seen();
            }
        }));
        closed = Shell.open(Optional.empty(), Sessions::open, Places.in(home));
        CountDownLatch there = new CountDownLatch(1);
        javax.swing.Timer look = new javax.swing.Timer(20, event -> {
            if (find()) {
                there.countDown();
            }
        });
        look.start();
        there.await();
        look.stop();
        EventQueue.invokeAndWait(() -> shown = ((Chart) chart.figure().orElseThrow()).here());
    }

    /** Closes the window. */
    @TearDown
    public void close() {
        EventQueue.invokeLater(() -> Stream.of(Frame.getFrames()).forEach(Window::dispose));
        closed.join();
    }

    private boolean find() {
        Optional<JSlider> dial = first(JSlider.class).filter(Component::isShowing);
        Optional<FigureView> figure =
                first(FigureView.class).filter(view -> view.figure().orElse(null) instanceof Chart);
        dial.ifPresent(found -> slider = found);
        figure.ifPresent(found -> chart = found);
        return dial.isPresent() && figure.isPresent();
    }

    private static <T> Optional<T> first(Class<T> kind) {
        return Stream.of(Window.getWindows())
                .flatMap(DragBenchmark::parts)
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst();
    }

    private static Stream<Component> parts(Container whole) {
        return Arrays.stream(whole.getComponents())
                .flatMap(part -> Stream.concat(
                        Stream.of(part), part instanceof Container inner ? parts(inner) : Stream.empty()));
    }

    /** The drag, to and fro, up to the picture of its last position. */
    @Benchmark
    public void dragOf300Positions(Seen seen) throws InterruptedException {
        drawn = 0;
        worst = 0;
        CountDownLatch done = new CountDownLatch(1);
        ScheduledExecutorService hand = Executors.newSingleThreadScheduledExecutor();
        int[] position = {0};
        Future<?> moving = hand.scheduleAtFixedRate(
                () -> {
                    int now = position[0]++;
                    EventQueue.invokeLater(() -> move(now, done));
                },
                0,
                APART_NANOS,
                TimeUnit.NANOSECONDS);
        done.await();
        moving.cancel(false);
        hand.shutdown();
        seen.drawn = drawn;
        seen.worstWaitMs = worst / 1_000_000;
    }

    private void move(int position, CountDownLatch done) {
        if (position < POSITIONS) {
            boolean last = position == POSITIONS - 1;
            int place = place(position, slider.getMaximum());
            waiting.add(new Asked(value(place), System.nanoTime()));
            slider.setValueIsAdjusting(!last);
            slider.setValue(place);
        } else if (waiting.isEmpty()) {
            done.countDown();
        }
    }

    /** Up the range, down again and so on, beginning one place beside the middle. */
    private static int place(int position, int most) {
        int way = (most / 2 + 1 + position) % (2 * most);
        return way <= most ? way : 2 * most - way;
    }

    private double value(int place) {
        Chart now = (Chart) chart.figure().orElseThrow();
        double from = now.steps().at(0);
        double to = now.steps().at(now.steps().size() - 1);
        return from + place * (to - from) / slider.getMaximum();
    }

    /** The window has been drawn; what of the drag can be seen in it has waited until now. */
    private void seen() {
        double here = chart == null ? shown : ((Chart) chart.figure().orElseThrow()).here();
        if (here != shown) {
            shown = here;
            drawn++;
            while (waiting.stream().anyMatch(asked -> isAt(asked, here))) {
                Asked asked = waiting.remove();
                worst = Math.max(worst, System.nanoTime() - asked.at());
                if (isAt(asked, here)) {
                    return;
                }
            }
        }
    }

    private static boolean isAt(Asked asked, double here) {
        return Math.abs(asked.value() - here) < 1e-6;
    }
}
