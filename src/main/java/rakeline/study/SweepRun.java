package rakeline.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.quantity.Sentences;

/** One run of a sweep: bikes drawn and read on all threads of a crew, a held measure followed on one. */
final class SweepRun {
    private final Sweep sweep;
    private final Crew crew;

    /**
     * What was found at a step.
     *
     * @param values of the tracked measures; NaN where there is none
     */
    private record Step(Optional<Bike> bike, Numbers values, List<Swept.Gap> gaps) {}

    private SweepRun(Sweep sweep, Crew crew) {
        this.sweep = sweep;
        this.crew = crew;
    }

    static Swept of(Sweep asked, Crew crew, Progress progress) {
        SweepRun run = settled(asked, crew);
        return run.swept(run.steps(progress), Collections.nCopies(asked.tracks().size(), Numbers.none()), "");
    }

    static Swept withUncertainty(Sweep asked, Crew crew, Progress progress) {
        SweepRun run = settled(asked, crew);
        List<Step> steps = run.steps(progress.part(0, 2));
        List<Numbers> uncertainties = SweptDoubts.of(
                run.sweep, steps.stream().map(Step::bike).toList(), run.values(steps), crew, progress.part(1, 2));
        return run.swept(steps, uncertainties, SweptDoubts.words(asked));
    }

    private static SweepRun settled(Sweep asked, Crew crew) {
        asked.tracks().forEach(track -> checkComplete(track, asked.start()));
        return new SweepRun(settle(asked, asked.start()), crew);
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

    private Swept swept(List<Step> steps, List<Numbers> uncertainties, String uncertain) {
        List<Numbers> values = values(steps);
        List<Swept.Column> columns = new ArrayList<>();
        for (int track = 0; track < values.size(); track++) {
            Measure<Ride> measure = sweep.tracks().get(track);
            columns.add(new Swept.Column(
                    measure.quantity(),
                    values.get(track),
                    measure.read(sweep.start()).orNaN(),
                    uncertainties.get(track)));
        }
        List<Swept.Gap> gaps =
                steps.stream().flatMap(step -> step.gaps().stream()).toList();
        return new Swept(sweep, columns, gaps, uncertain);
    }

    private List<Numbers> values(List<Step> steps) {
        return IntStream.range(0, sweep.tracks().size())
                .mapToObj(track -> Numbers.generate(
                        steps.size(), step -> steps.get(step).values().at(track)))
                .toList();
    }

    private List<Step> steps(Progress progress) {
        int count = sweep.steps().size();
        if (sweep.hold().isEmpty()) {
            Variation variation = sweep.variation();
            return crew.map(count, step -> plain(variation, step), progress);
        }
        String[] missed = new String[count];
        List<Optional<Bike>> bikes =
                HeldWalk.of(sweep, (step, reason) -> missed[step] = reason).bikes(progress.part(0, 2));
        return crew.map(
                count,
                step -> bikes.get(step).map(bike -> read(step, bike)).orElseGet(() -> missed(step, missed[step])),
                progress.part(1, 2));
    }

    private Step plain(Variation variation, int step) {
        try {
            return read(step, variation.at(sweep.steps().at(step)));
        } catch (Refusal e) {
            return missed(step, e.getMessage());
        }
    }

    private Step missed(int step, String reason) {
        Numbers nothing = Numbers.generate(sweep.tracks().size(), track -> Double.NaN);
        Swept.Gap gap = new Swept.Gap(step, sweep.vary().key(), reason);
        return new Step(Optional.empty(), nothing, List.of(gap));
    }

    private Step read(int step, Bike bike) {
        Ride ride = sweep.start().on(bike);
        double[] values = new double[sweep.tracks().size()];
        List<Swept.Gap> gaps = new ArrayList<>();
        for (int track = 0; track < values.length; track++) {
            Measure<Ride> measure = sweep.tracks().get(track);
            Reading reading = measure.read(ride);
            values[track] = reading.orNaN();
            if (!(reading instanceof Reading.Known)) {
                gaps.add(new Swept.Gap(step, measure.key(), reading.reason()));
            }
        }
        return new Step(Optional.of(bike), Numbers.of(values), gaps);
    }
}
