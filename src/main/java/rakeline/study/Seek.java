package rakeline.study;

import java.util.List;
import java.util.Optional;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;

/**
 * Looks for every value of one number at which a measure hits its target.
 *
 * <p>The range is looked at in {@value #PLACES} places, and closer wherever the measure crosses the target, bends
 * towards it or ends; each solution is given once, polished as far as the measure itself is exact. Where the measure
 * turns at the target and rounding alone is left, that is one solution, said to be touched; where it passes by more, there
 * are two, however close. What happens entirely between two places, as a gap or a bump narrower than a four-hundredth of
 * the range, can be missed.
 *
 * @param start the bike as it is, and who rides it
 * @param hold what is held meanwhile, by solving for another number
 */
public record Seek(Ride start, Span over, Target target, Optional<Hold> hold) {
    /** In how many places the range is looked at. */
    public static final int PLACES = 401;

    public Seek {
        if (hold.isPresent()
                && hold.get().by().inputs().stream().anyMatch(over.setting().inputs()::contains)) {
            throw new Refusal(
                    "the search varies " + over.setting().quantity().withKey() + " and cannot solve for it as well.");
        }
    }

    /**
     * Runs it.
     *
     * @throws Refusal where the bike lacks what a measure needs, or the held measure has no value at the start
     */
    public Sought run() {
        SweepRun.checkComplete(target.measure(), start);
        Seek settled = new Seek(start, over, target, hold.map(held -> SweepRun.settle(held, start)));
        return settled.sought();
    }

    private Sought sought() {
        Numbers places = Steps.evenly(over.from(), over.to(), PLACES);
        Along along = hold.isPresent()
                ? Along.held(start, over.varied(), hold.get(), places, target.measure())
                : Along.plain(variation());
        RootScan scan = RootScan.of(value -> excess(along.at(value)), places, Math.abs(target.value()));
        checkDrawn(scan, places, along);
        List<Sought.Solution> solutions = scan.roots().stream()
                .map(root -> new Sought.Solution(root.at(), along.at(root.at()).orElseThrow(), root.touching()))
                .toList();
        Optional<Sought.Nearest> nearest = solutions.isEmpty() ? nearest(scan, along) : Optional.empty();
        return new Sought(this, solutions, stretches(scan), nearest);
    }

    /** Where no bike has any of the numbers, the reason is worth more than that nothing was found. */
    private void checkDrawn(RootScan scan, Numbers places, Along along) {
        if (hold.isEmpty()
                && scan.roots().isEmpty()
                && places.stream().allMatch(at -> along.at(at).isEmpty())) {
            variation().at(over.from());
        }
    }

    private double excess(Optional<Bike> bike) {
        return bike.isEmpty() ? Double.NaN : target.excess(start.on(bike.get()));
    }

    private Optional<Sought.Nearest> nearest(RootScan scan, Along along) {
        return scan.nearest().stream()
                .mapToObj(at -> new Sought.Nearest(at, target.value() + excess(along.at(at))))
                .findFirst();
    }

    private static List<Sought.Stretch> stretches(RootScan scan) {
        return scan.stretches().stream()
                .map(stretch -> new Sought.Stretch(stretch.from(), stretch.to()))
                .toList();
    }

    Variation variation() {
        return new Variation(start.bike(), List.of(over.varied()));
    }
}
