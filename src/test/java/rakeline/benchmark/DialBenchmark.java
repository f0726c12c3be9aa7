package rakeline.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
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
import rakeline.engine.Outcome;
import rakeline.engine.Session;
import rakeline.engine.jshell.Sessions;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** A page of ten rows after a dial has moved, to its outcomes delivered, beside the ten rows from source. */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.AverageTime, Mode.SampleTime})
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class DialBenchmark {
    private static final List<String> TEN = List.of(
            "double head = dial(\"Head angle\", \"°\", 69, 74, 0.1, 71.3);",
            "double radius = 336;",
            "double offset = 45;",
            "double trail = (radius * cos(toRadians(head)) - offset) / sin(toRadians(head));",
            "double flop = trail * sin(toRadians(head)) * cos(toRadians(head));",
            "double mechanical = trail * sin(toRadians(head));",
            "String words = \"trail \" + round(trail);",
            "double[] several = DoubleStream.iterate(69, x -> x + 0.05).limit(101)"
                    + ".map(x -> (radius * cos(toRadians(x)) - offset) / sin(toRadians(x)) - trail).toArray();",
            "double most = Arrays.stream(several).max().orElse(0);",
            "words + \", \" + most + \", \" + flop + \", \" + mechanical");

    private static final List<String> SWEEP = List.of(
            "Bike xs = bike(\"demo-data/bikes/endurance-xs.bike.json\");",
            "double head = dial(\"Head angle\", \"°\", 69, 74, 0.1, 71.3);",
            "Bike it = xs.with(\"frame.headAngleDeg\", head);",
            "double trail = measure(it, TRAIL);",
            "double flop = trail * sin(toRadians(head)) * cos(toRadians(head));",
            "double mechanical = trail * sin(toRadians(head));",
            "String words = \"trail \" + round(trail);",
            "double[] several = DoubleStream.iterate(69, x -> x + 0.05).limit(101).map(x -> x - trail).toArray();",
            "words + \", \" + flop + \", \" + mechanical + several.length",
            "sweep(it).over(\"fork.offsetMm\", 40, 50, STEP).track(\"trailMm\", \"toeRoomMm\").chart()");

    private Session ten;
    private Session sweep;
    private Session full;
    private int turn;

    @Setup
    public void open() throws InterruptedException {
        ten = Sessions.open(Session.Settings.standard());
        ten.show(page(TEN));
        ten.settle();
        sweep = Sessions.open(Session.Settings.standard());
        sweep.show(page(sweep("0.1", "")));
        sweep.settle();
        full = Sessions.open(Session.Settings.standard());
        full.show(page(sweep("0.01", "")));
        full.settle();
    }

    @TearDown
    public void close() {
        ten.close();
        sweep.close();
        full.close();
    }

    @Benchmark
    public List<Outcome> dialMoved() throws InterruptedException {
        ten.dial("head", next());
        return ten.settle();
    }

    /** Each row is another text each time, so that all ten are compiled and run. */
    @Benchmark
    public List<Outcome> fromSource() throws InterruptedException {
        String mark = " // " + turn++;
        ten.show(page(TEN.stream().map(text -> text + mark).toList()));
        return ten.settle();
    }

    /** Ten rows with 101 steps of the toes' room: to be within a frame of 1/60 s at the 95th percentile. */
    @Benchmark
    public List<Outcome> sweepDialMoved() throws InterruptedException {
        sweep.dial("head", next());
        return sweep.settle();
    }

    /** The same ten rows from source. */
    @Benchmark
    public List<Outcome> sweepFromSource() throws InterruptedException {
        sweep.show(page(sweep("0.1", " // " + turn++)));
        return sweep.settle();
    }

    /** 1001 steps, each solved cold: to be there within 150 ms of rest. */
    @Benchmark
    public List<Outcome> fullSweepDialMoved() throws InterruptedException {
        full.dial("head", next());
        return full.settle();
    }

    private static List<String> sweep(String step, String mark) {
        return SWEEP.stream().map(text -> text.replace("STEP", step) + mark).toList();
    }

    private double next() {
        turn++;
        return 69 + turn % 50 * 0.1;
    }

    private static Worksheet page(List<String> texts) {
        List<Row> rows = new ArrayList<>();
        for (String text : texts) {
            rows.add(new Row.Snippet("r" + rows.size(), text, false, false, OptionalInt.empty()));
        }
        return Worksheet.empty("Benchmark").withRows(rows);
    }
}
