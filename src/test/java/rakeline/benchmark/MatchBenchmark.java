package rakeline.benchmark;

import java.util.List;
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
import org.openjdk.jmh.annotations.Warmup;
import rakeline.study.fit.Match;
import rakeline.study.fit.Matched;
import rakeline.study.fit.Option;
import rakeline.study.fit.PlainMatch;
import rakeline.study.fit.Stocks;

/**
 * Stock parts matched to another bike's contact points, 9,984 combinations; beside a plain search that builds each
 * combination's bike and reads its measures, with the toe numbers, and without them, which is all that the arithmetic
 * alone can save.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class MatchBenchmark {
    private final Match match = Match.of(DemoBikes.read("endurance-s"), DemoBikes.read("road-s"), Stocks.tenThousand());

    /** The same answer, before either is timed. */
    @Setup
    public void check() {
        List<PlainMatch.Found> plain = PlainMatch.all(match, true).subList(0, 10);
        List<Option> fast = match.best(10).options();
        for (int i = 0; i < plain.size(); i++) {
            if (!plain.get(i).bike().equals(fast.get(i).bike())) {
                throw new IllegalStateException("the searches differ at place " + (i + 1));
            }
        }
    }

    @Benchmark
    public Matched tenBest() {
        return match.best(10);
    }

    @Benchmark
    public Matched all() {
        return match.all();
    }

    @Benchmark
    public List<PlainMatch.Found> plain() {
        return PlainMatch.all(match, true);
    }

    @Benchmark
    public List<PlainMatch.Found> plainWithoutToes() {
        return PlainMatch.all(match, false);
    }
}
