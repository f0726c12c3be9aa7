package rakeline.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;

/**
 * One measure over two numbers.
 *
 * @param start the bike as it is, and who rides it
 * @param x what varies to the right
 * @param y what varies upward
 * @param hold what is held meanwhile, by solving for a third number
 */
public record GridMap(Ride start, Axis x, Axis y, Measure<Ride> track, Optional<Hold> hold) {
    /** The most places that a map may have. */
    public static final int MOST = 1_000_000;

    /** Each picture looks at every so-manieth value of both axes; the last at all. */
    private static final int[] STRIDES = {8, 4, 2, 1};

    /**
     * A number that varies, and its values in order.
     *
     * @param steps at least two
     */
    public record Axis(Varied varied, Numbers steps) {
        /** How many values an axis has where no step is given. */
        public static final int USUAL = 61;

        public Axis {
            varied.setting().quantity().check(steps.at(0));
            varied.setting().quantity().check(steps.at(steps.size() - 1));
        }

        /** So many values as a map takes where no step is given, {@value #USUAL}, ends included. */
        public static Axis of(Varied varied, double from, double to) {
            return new Axis(varied, Steps.evenly(from, to, USUAL));
        }

        public String key() {
            return varied.key();
        }

        /** The axis with these of its values alone. */
        Axis at(int... chosen) {
            return new Axis(varied, Numbers.generate(chosen.length, i -> steps.at(chosen[i])));
        }
    }

    /** A map with nothing held. */
    public GridMap(Ride start, Axis x, Axis y, Measure<Ride> track) {
        this(start, x, y, track, Optional.empty());
    }

    public GridMap {
        if ((long) x.steps().size() * y.steps().size() > MOST) {
            throw new Refusal("the map has "
                    + (long) x.steps().size() * y.steps().size() + " places; accepted are 1,000,000: wider steps.");
        }
    }

    /**
     * Runs it on all cores.
     *
     * @throws Refusal where the bike lacks what the measure needs, or both axes vary the same number
     */
    public Mapped run() {
        return run(Crew.onAllCores(), picture -> {}, Progress.UNWATCHED);
    }

    /**
     * Runs it, coarse pictures first: the first looks at every eighth value of both axes. With a measure held there are
     * none, since the way to each place leads through its neighbours.
     *
     * @param pictures is given each picture but the last, on the caller's thread
     * @return the whole map, the same with any crew
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    public Mapped run(Crew crew, Consumer<Mapped> pictures, Progress progress) {
        SweepRun.checkComplete(track, start);
        Variation variation = variation();
        if (hold.isPresent()) {
            GridMap settled = new GridMap(start, x, y, track, hold.map(held -> SweepRun.settle(held, start)));
            return settled.mapped(x, y, new HeldGrid(settled).readings(crew, progress));
        }
        Reading[] readings = new Reading[x.steps().size() * y.steps().size()];
        for (int stride : STRIDES) {
            int[] columns = every(stride, x.steps().size());
            int[] rows = every(stride, y.steps().size());
            fill(readings, columns, rows, variation, crew, progress);
            if (stride > 1) {
                pictures.accept(picture(readings, columns, rows));
            }
        }
        return mapped(x, y, readings);
    }

    /** Reads what a picture needs and no earlier one has read. */
    private void fill(
            Reading[] readings, int[] columns, int[] rows, Variation variation, Crew crew, Progress progress) {
        int[] open =
                places(columns, rows).filter(place -> readings[place] == null).toArray();
        double done =
                readings.length - Arrays.stream(readings).filter(r -> r == null).count();
        crew.each(
                open.length,
                i -> readings[open[i]] = read(open[i], variation),
                share -> progress.goesOn((done + share * open.length) / readings.length));
    }

    Variation variation() {
        return new Variation(start.bike(), List.of(x.varied(), y.varied()));
    }

    private IntStream places(int[] columns, int[] rows) {
        return Arrays.stream(columns).flatMap(column -> Arrays.stream(rows).map(row -> place(column, row)));
    }

    private int place(int column, int row) {
        return column * y.steps().size() + row;
    }

    private Reading read(int place, Variation variation) {
        double atX = x.steps().at(place / y.steps().size());
        double atY = y.steps().at(place % y.steps().size());
        try {
            return track.read(start.on(variation.at(atX, atY)));
        } catch (Refusal e) {
            return Reading.nowhere(e.getMessage());
        }
    }

    private Mapped picture(Reading[] readings, int[] columns, int[] rows) {
        Reading[] seen =
                places(columns, rows).mapToObj(place -> readings[place]).toArray(Reading[]::new);
        return mapped(x.at(columns), y.at(rows), seen);
    }

    private Mapped mapped(Axis columns, Axis rows, Reading... readings) {
        Numbers values = Numbers.generate(readings.length, i -> readings[i].orNaN());
        List<Mapped.Gap> gaps = IntStream.range(0, readings.length)
                .filter(i -> !(readings[i] instanceof Reading.Known))
                .mapToObj(i -> new Mapped.Gap(i, readings[i].reason()))
                .toList();
        return new Mapped(
                new GridMap(start, columns, rows, track, hold),
                values,
                track.read(start).orNaN(),
                gaps);
    }

    /** 0, stride, 2 · stride, …, and the last. */
    private static int[] every(int stride, int size) {
        int last = size - 1;
        return IntStream.concat(IntStream.iterate(0, i -> i < last, i -> i + stride), IntStream.of(last))
                .toArray();
    }
}
