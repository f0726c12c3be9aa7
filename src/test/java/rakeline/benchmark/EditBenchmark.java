package rakeline.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
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

/** An edit of one row that two others use, in a page of ten rows and in one of a hundred. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class EditBenchmark {
    @Param({"10", "100"})
    public int rows;

    private Session session;
    private int turn;

    @Setup
    public void open() throws InterruptedException {
        session = Sessions.open(Session.Settings.standard());
        session.show(page());
        session.settle();
    }

    @TearDown
    public void close() {
        session.close();
    }

    @Benchmark
    public List<Outcome> rowEdited() throws InterruptedException {
        turn++;
        session.show(page());
        return session.settle();
    }

    private Worksheet page() {
        List<Row> page = new ArrayList<>();
        page.add(Row.Snippet.of("edited", "double head = " + turn + ";"));
        page.add(Row.Snippet.of("one", "double one = head + 1;"));
        page.add(Row.Snippet.of("two", "double two = one * head;"));
        IntStream.range(3, rows)
                .mapToObj(i -> Row.Snippet.of("r" + i, "double other" + i + " = " + i + ";"))
                .forEach(page::add);
        return Worksheet.empty("Benchmark").withRows(page);
    }
}
