package rakeline.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.quantity.Sentences;

/** One run of a sweep. */
final class SweepRun {
    private final Sweep sweep;
    private final Variation variation;
    private final List<Swept.Gap> gaps = new ArrayList<>();

    private SweepRun(Sweep sweep) {
        this.sweep = sweep;
        this.variation = sweep.variation();
    }

    static Swept of(Sweep asked) {
        SweepRun run = settled(asked);
        return run.run(asked.start(), run.bikes(), values -> run.nothing(), "");
    }

    static Swept withUncertainty(Sweep asked) {
        SweepRun run = settled(asked);
        List<Optional<Bike>> bikes = run.bikes();
        return run.run(
                asked.start(), bikes, values -> SweptDoubts.of(run.sweep, bikes, values), SweptDoubts.words(asked));
    }

    private static SweepRun settled(Sweep asked) {
        asked.tracks().forEach(track -> checkComplete(track, asked.start()));
        return new SweepRun(settle(asked, asked.start()));
    }

    private List<Numbers> nothing() {
        return Collections.nCopies(sweep.tracks().size(), Numbers.none());
    }

    private static Sweep settle(Sweep asked, Ride start) {
        return new Sweep(
                asked.start(),
                asked.vary(),
                asked.steps(),
                asked.mode(),
                asked.hold().map(hold -> settle(hold, start)),
                asked.tracks());
    }

    /** The hold, its target settled: a value that is not given is that of the start. */
    static Hold settle(Hold hold, Ride start) {
        checkComplete(hold.measure(), start);
        if (Double.isNaN(hold.by().valueIn(start.bike()))) {
            throw new Refusal(start.bike().name() + " does not give "
                    + hold.by().quantity().withKey() + ", so that "
                    + hold.measure().quantity().inSentence() + " cannot be held by it.");
        }
        Reading now = hold.measure().read(start);
        if (Double.isNaN(hold.target()) && !(now instanceof Reading.Known)) {
            throw new Refusal(Sentences.upper(hold.measure().quantity().withKey())
                    + " cannot be held at its starting value: " + now.reason() + ".");
        }
        return Double.isNaN(hold.target()) ? hold.at(now.orNaN()) : hold;
    }

    /** Refuses a measure that the bike lacks a number for. */
    static void checkComplete(Measure<Ride> measure, Ride start) {
        if (measure.read(start) instanceof Reading.Lacking lacking) {
            throw new Refusal(start.bike().name() + " does not give what "
                    + measure.quantity().withKey() + " needs: " + lacking.what() + ".");
        }
    }

    private Swept run(
            Ride start, List<Optional<Bike>> bikes, Function<List<Numbers>, List<Numbers>> doubtsOf, String uncertain) {
        int count = sweep.steps().size();
        double[][] values = new double[sweep.tracks().size()][count];
        for (int step = 0; step < count; step++) {
            read(bikes.get(step), step, values);
        }
        List<Numbers> known = Arrays.stream(values).map(Numbers::of).toList();
        List<Numbers> uncertainties = doubtsOf.apply(known);
        List<Swept.Column> columns = new ArrayList<>();
        for (int track = 0; track < values.length; track++) {
            Measure<Ride> measure = sweep.tracks().get(track);
            columns.add(new Swept.Column(
                    measure.quantity(), known.get(track), measure.read(start).orNaN(), uncertainties.get(track)));
        }
        gaps.sort(Comparator.comparingInt(Swept.Gap::step));
        return new Swept(sweep, columns, gaps, uncertain);
    }

    private void read(Optional<Bike> bike, int step, double[][] values) {
        for (double[] column : values) {
            column[step] = Double.NaN;
        }
        if (bike.isPresent()) {
            Ride ride = sweep.start().on(bike.get());
            for (int track = 0; track < values.length; track++) {
                Reading reading = sweep.tracks().get(track).read(ride);
                values[track][step] = reading.orNaN();
                noteGap(step, sweep.tracks().get(track).key(), reading);
            }
        }
    }

    private void noteGap(int step, String key, Reading reading) {
        if (!(reading instanceof Reading.Known)) {
            gaps.add(new Swept.Gap(step, key, reading.reason()));
        }
    }

    private List<Optional<Bike>> bikes() {
        if (sweep.hold().isPresent()) {
            return HeldWalk.of(sweep, this::noteMiss).bikes();
        }
        return IntStream.range(0, sweep.steps().size()).mapToObj(this::plain).toList();
    }

    private Optional<Bike> plain(int step) {
        try {
            return Optional.of(variation.at(sweep.steps().at(step)));
        } catch (Refusal e) {
            noteMiss(step, e.getMessage());
            return Optional.empty();
        }
    }

    private void noteMiss(int step, String reason) {
        gaps.add(new Swept.Gap(step, sweep.vary().key(), reason));
    }
}
