package rakeline.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rakeline.handling.Ride;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;

/**
 * Looks for the values of several numbers at which as many measures hit their targets at once.
 *
 * <p>It goes downhill from the bike as it is, in small steps of the targets, and from a grid of places over the ranges;
 * what is found twice counts once. The solution continuous with the bike as it is comes first, the others by distance
 * from it, each number's measured in its range.
 *
 * @param start the bike as it is, and who rides it
 * @param spans the numbers looked for, each with its range
 * @param targets as many
 */
public record Solve(Ride start, List<Span> spans, List<Target> targets) {
    private static final int MOST = 4;

    /** Places of the grid along each number, by how many numbers there are. */
    private static final int[] GRID = {0, 33, 9, 5, 3};

    /** In how many steps the targets are moved from what the bike has to what is wanted. */
    private static final int APPROACH = 16;

    /** What may be left of a target, of the target or of 1, whichever is more. */
    private static final double LEFT = 1e-10;

    private static final double SAME = 1e-6;

    public Solve {
        spans = List.copyOf(spans);
        targets = List.copyOf(targets);
        if (spans.isEmpty() || spans.size() > MOST || spans.size() != targets.size()) {
            throw new Refusal("there are " + spans.size() + " inputs to vary for " + targets.size()
                    + " targets; accepted are as many of one as of the other, 1 to " + MOST + ".");
        }
        checkDifferent(targets);
    }

    /** The same measure twice is one condition, or two that contradict each other. */
    private static void checkDifferent(List<Target> targets) {
        Set<String> keys = new HashSet<>();
        for (Target target : targets) {
            if (!keys.add(target.measure().key())) {
                throw new Refusal(
                        target.measure().quantity().withKey() + " is a target twice; accepted are different measures.");
            }
        }
    }

    /** Runs it on all cores. */
    public Solved run() {
        return run(Crew.onAllCores(), Progress.UNWATCHED);
    }

    /**
     * Runs it.
     *
     * @return the same with any crew
     * @throws Refusal where the bike lacks what a measure needs, or a number is varied twice
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    public Solved run(Crew crew, Progress progress) {
        targets.forEach(target -> SweepRun.checkComplete(target.measure(), start));
        Variation variation = variation();
        List<LeastMiss.Spot> ends = ends(variation, crew, progress);
        List<LeastMiss.Spot> hits = distinct(ends.stream().filter(this::isHit).toList());
        Optional<LeastMiss.Spot> nearest = ends.stream()
                .filter(end -> hits.isEmpty() && end.isKnown())
                .min(Comparator.comparingDouble(LeastMiss.Spot::sum));
        return new Solved(
                this,
                hits.stream().map(spot -> place(variation, spot)).toList(),
                nearest.map(spot -> place(variation, spot)));
    }

    /** Where all ways end: the one continuous with the bike as it is first, the others by distance from it. */
    private List<LeastMiss.Spot> ends(Variation variation, Crew crew, Progress progress) {
        Numbers here = here();
        List<LeastMiss.Spot> ends = new ArrayList<>();
        continuous(variation).ifPresent(ends::add);
        fromGrid(new LeastMiss(at -> misses(variation, 1, at)), crew, progress).stream()
                .sorted(Comparator.comparingDouble(end -> end.distance(here)))
                .forEach(ends::add);
        return ends;
    }

    private Variation variation() {
        return new Variation(start.bike(), spans.stream().map(Span::varied).toList());
    }

    /** From the bike as it is, targets moved little by little; none where it lies outside or the way is lost. */
    private Optional<LeastMiss.Spot> continuous(Variation variation) {
        Numbers here = here();
        if (here.stream().anyMatch(share -> !(share >= 0 && share <= 1))) {
            return Optional.empty();
        }
        LeastMiss.Spot spot = new LeastMiss(place -> misses(variation, 0, place)).spot(here);
        for (int step = 1; step <= APPROACH && spot.isKnown(); step++) {
            double share = (double) step / APPROACH;
            spot = new LeastMiss(place -> misses(variation, share, place)).from(spot.place());
            if (!isHit(spot)) {
                return Optional.empty();
            }
        }
        return spot.isKnown() ? Optional.of(spot) : Optional.empty();
    }

    private List<LeastMiss.Spot> fromGrid(LeastMiss wanted, Crew crew, Progress progress) {
        int each = GRID[spans.size()];
        return crew.map((int) Math.pow(each, spans.size()), i -> wanted.from(gridPlace(i, each)), progress);
    }

    private Numbers gridPlace(int index, int each) {
        double[] at = new double[spans.size()];
        int rest = index;
        for (int i = 0; i < at.length; i++) {
            at[i] = (rest % each + 0.5) / each;
            rest /= each;
        }
        return Numbers.of(at);
    }

    /** The bike's own numbers as shares of their ranges. */
    private Numbers here() {
        return Numbers.of(spans.stream()
                .mapToDouble(span -> (span.setting().valueIn(start.bike()) - span.from()) / span.width())
                .toArray());
    }

    /**
     * What the measures miss.
     *
     * @param share of the way from what the bike has to the targets
     */
    private Numbers misses(Variation variation, double share, Numbers place) {
        Optional<Ride> ride = ride(variation, place);
        return Numbers.of(targets.stream()
                .mapToDouble(
                        target -> ride.isEmpty() ? Double.NaN : target.excess(ride.get()) + (1 - share) * owed(target))
                .toArray());
    }

    private double owed(Target target) {
        return -target.excess(start);
    }

    private Optional<Ride> ride(Variation variation, Numbers place) {
        try {
            return Optional.of(start.on(variation.at(values(place).toArray())));
        } catch (Refusal e) {
            // no bike has these numbers: no way leads through here
            return Optional.empty();
        }
    }

    private Numbers values(Numbers place) {
        return Numbers.generate(place.size(), i -> {
            Span span = spans.get(i);
            return place.at(i) == 1 ? span.to() : span.from() + place.at(i) * span.width();
        });
    }

    private boolean isHit(LeastMiss.Spot spot) {
        for (int i = 0; i < targets.size(); i++) {
            double left = Math.abs(spot.misses().at(i));
            if (!(left <= LEFT * Math.max(1, Math.abs(targets.get(i).value())))) {
                return false;
            }
        }
        return true;
    }

    private static List<LeastMiss.Spot> distinct(List<LeastMiss.Spot> hits) {
        List<LeastMiss.Spot> apart = new ArrayList<>();
        for (LeastMiss.Spot hit : hits) {
            if (apart.stream().noneMatch(known -> known.distance(hit.place()) < SAME)) {
                apart.add(hit);
            }
        }
        return apart;
    }

    private Solved.Place place(Variation variation, LeastMiss.Spot spot) {
        Numbers values = values(spot.place());
        return new Solved.Place(values, spot.misses(), variation.at(values.toArray()));
    }
}
