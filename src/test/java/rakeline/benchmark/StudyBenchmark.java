package rakeline.benchmark;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.study.Crew;
import rakeline.study.GridMap;
import rakeline.study.Mapped;
import rakeline.study.Progress;
import rakeline.study.Scatter;
import rakeline.study.Spread;
import rakeline.study.Steps;
import rakeline.study.Sweep;
import rakeline.study.Swept;
import rakeline.study.Varied;
import rakeline.study.Vocabulary;

/**
 * A map of toe room in 200 by 200 places, its first coarse picture, a sweep of trail and toe room in 2,001 steps, and
 * 10,000 draws of all toe numbers: on all cores beside one.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class StudyBenchmark {
    private static final int PLACES = 200;

    private final Ride ride = Ride.of(DemoBikes.read("road-xs"));
    private final GridMap map = new GridMap(
            ride,
            axis("frame.headAngleDeg", 68, 74),
            axis("fork.offsetMm", 40, 60),
            Vocabulary.standard().measure("toeRoomMm"));
    private final Sweep sweep = new Sweep(
            ride,
            Setting.of("frame.headAngleDeg"),
            Steps.of(68, 74, 0.003),
            rakeline.study.Mode.REDRAW,
            Optional.empty(),
            Vocabulary.standard().chosen(List.of("trailMm", "toeRoomMm"), ride));
    private final Spread spread = Spread.of(
            ride,
            Vocabulary.standard()
                    .chosen(List.of("toeRoomMm", "toeGapLeastMm", "toeContactSteerDeg", "pedalToTyreMm"), ride));

    @Benchmark
    public Mapped mapOnAllCores() {
        return map.run();
    }

    @Benchmark
    public Mapped mapOnOneCore() {
        return map.run(Crew.of(1), picture -> {}, Progress.UNWATCHED);
    }

    /** On all cores, until there is something to look at. */
    @Benchmark
    public Mapped firstPicture() {
        AtomicReference<Mapped> first = new AtomicReference<>();
        try {
            return map.run(Crew.onAllCores(), first::set, share -> first.get() == null);
        } catch (CancellationException e) {
            // stopped as asked, once the first picture was there
            return first.get();
        }
    }

    @Benchmark
    public Swept sweepOnAllCores() {
        return sweep.run();
    }

    @Benchmark
    public Swept sweepOnOneCore() {
        return sweep.run(Crew.of(1), Progress.UNWATCHED);
    }

    @Benchmark
    public Scatter drawsOnAllCores() {
        return spread.run();
    }

    @Benchmark
    public Scatter drawsOnOneCore() {
        return spread.run(Crew.of(1), Progress.UNWATCHED);
    }

    private static GridMap.Axis axis(String key, double from, double to) {
        return new GridMap.Axis(Varied.of(Setting.of(key)), Steps.of(from, to, (to - from) / (PLACES - 1)));
    }
}
