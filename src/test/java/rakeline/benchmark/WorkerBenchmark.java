package rakeline.benchmark;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
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
import rakeline.engine.Result;
import rakeline.engine.Session;
import rakeline.engine.jshell.Sessions;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** The first result of a session, cold and with a warmed engine; a worker replaced, with another standing by and without. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 10)
@Fork(1)
public class WorkerBenchmark {
    private static final Worksheet PAGE = Worksheet.empty("Benchmark")
            .withRows(List.of(
                    Row.Snippet.of("bike", "Bike xs = bike(\"demo-data/bikes/road-xs.bike.json\");"),
                    Row.Snippet.of("trail", "double trail = measure(xs, TRAIL);"),
                    Row.Snippet.of("more", "trail + 1"),
                    Row.Snippet.of("process", "ProcessHandle.current().pid()")));

    /** From nothing, in a process that has just begun. */
    @Benchmark
    @Fork(5)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public List<Outcome> firstResultCold() throws InterruptedException {
        return firstResult();
    }

    /** From nothing, in a process that has opened sessions before. */
    @Benchmark
    public List<Outcome> firstResultWarm() throws InterruptedException {
        return firstResult();
    }

    private static List<Outcome> firstResult() throws InterruptedException {
        try (Session session = Sessions.open(Session.Settings.standard().withoutStandby())) {
            session.show(PAGE);
            return session.settle();
        }
    }

    /** A session whose page stands, and whose next worker has had time to start where one is wanted. */
    @State(Scope.Thread)
    public static class Standing {
        private static final long STARTED_NANOS = TimeUnit.SECONDS.toNanos(3);

        @Param({"true", "false"})
        public boolean standby;

        private CountDownLatch replaced;
        private Session session;
        private ProcessHandle worker;

        @Setup(Level.Iteration)
        public void open() throws InterruptedException {
            Session.Settings settings = Session.Settings.standard();
            session = Sessions.open(standby ? settings : settings.withoutStandby());
            replaced = new CountDownLatch(1);
            session.listen(this::hear);
            session.show(PAGE);
            worker = ProcessHandle.of(number(session.settle().get(3))).orElseThrow();
            LockSupport.parkNanos(STARTED_NANOS);
        }

        private void hear(Session.Event event) {
            if (event instanceof Session.Event.Replaced) {
                replaced.countDown();
            }
        }

        private static long number(Outcome outcome) {
            return (long) ((Result.Value) outcome.result().orElseThrow()).number();
        }

        @TearDown(Level.Iteration)
        public void close() {
            session.close();
        }
    }

    /** From the worker's being killed to the page being whole again. */
    @Benchmark
    public List<Outcome> workerReplaced(Standing standing) throws InterruptedException {
        standing.worker.destroyForcibly();
        standing.replaced.await();
        return standing.session.settle();
    }
}
