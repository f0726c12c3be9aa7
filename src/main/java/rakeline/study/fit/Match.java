package rakeline.study.fit;

import java.util.ArrayList;
import java.util.List;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Hands;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Stock;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;
import rakeline.rider.Rider;
import rakeline.study.Progress;

/**
 * Stock parts for a frame, so that hoods and saddle come where they are wanted. The sit point is held from the pedal and
 * met by post and rails exactly. Combinations within every limit come before any that is beyond one; then count how much
 * further than the tolerance the hoods are off, what is left to the tightest limit, how many kinds of parts are not those
 * on the bike, and where all that is the same how far the hoods are off, the height of spacers, the length of the stem,
 * and the parts' numbers in the order of their keys. Posts that put the saddle on the same point are one option.
 *
 * <p>Another fork or tyre is refitted: the frame turns about the ground, the wanted points do not. Everything else is
 * put on as its numbers say.
 *
 * @param bike the frame, with all that the stock does not replace
 * @param reference what levers are compared with, where its hands are
 * @param toleranceMm how far off the hoods may be without counting
 */
public record Match(Bike bike, Wanted wanted, Geometry reference, Stock stock, double toleranceMm) {
    /** Hoods so far off, in millimetres, are where they are wanted, unless another tolerance is given. */
    public static final double USUAL_TOLERANCE_MM = 3;

    /** Beyond so many combinations the search is refused. */
    public static final int MOST_COMBINATIONS = 5_000_000;

    private static final double MOST_TOLERANCE_MM = 100;

    /** Beyond so many options a list of them is refused. */
    public static final int MOST_OPTIONS = 50_000;

    /** With the usual tolerance. */
    public Match(Bike bike, Wanted wanted, Geometry reference, Stock stock) {
        this(bike, wanted, reference, stock, USUAL_TOLERANCE_MM);
    }

    public Match {
        if (!(toleranceMm >= 0 && toleranceMm <= MOST_TOLERANCE_MM)) {
            throw new Refusal("the tolerance is " + Decimals.shown(toleranceMm) + " mm; accepted is 0 to "
                    + Decimals.shown(MOST_TOLERANCE_MM) + " mm.");
        }
        if (stock.combinations() > MOST_COMBINATIONS) {
            throw new Refusal("the parts \"" + stock.name() + "\" make " + Decimals.shortest(stock.combinations())
                    + " combinations; accepted are up to " + MOST_COMBINATIONS + ".");
        }
    }

    /** A match compared with the bike whose points are wanted. */
    public static Match of(Bike bike, Bike to, Stock stock) {
        return new Match(bike, Wanted.of(to), Geometry.of(to, Hands.HOODS), stock);
    }

    /** A match for a rider, whose shoe and crank go on the bike. */
    public static Match of(Bike bike, Rider rider, Geometry reference, Stock stock) {
        return new Match(bike, Wanted.of(rider), reference, stock);
    }

    /** Every combination, best first. */
    public Matched all() {
        return all(Progress.UNWATCHED);
    }

    /**
     * Every combination, best first.
     *
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    public Matched all(Progress progress) {
        if (stock.combinations() > MOST_OPTIONS) {
            throw new Refusal("the parts \"" + stock.name() + "\" make " + Decimals.shortest(stock.combinations())
                    + " combinations; accepted for a list of all are up to " + MOST_OPTIONS + ".");
        }
        return best(MOST_OPTIONS, progress);
    }

    /**
     * The best combinations, best first.
     *
     * @param most from 1 up
     */
    public Matched best(int most) {
        return best(most, Progress.UNWATCHED);
    }

    /**
     * The best combinations, best first.
     *
     * @param most from 1 up
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    public Matched best(int most, Progress progress) {
        Best best = new Best(most);
        Bike base = wanted.on(bike);
        int forks = stock.choices(Category.FORKS).size();
        int tyres = stock.choices(Category.TYRES).size();
        for (int mount = 0; mount < forks * tyres; mount++) {
            Progress part = progress.part(mount, forks * tyres);
            Mount.of(this, base, mount / tyres, mount % tyres).search(best, part);
        }
        List<Option> options = new ArrayList<>();
        best.ranked().forEach(candidate -> options.add(candidate.option()));
        return new Matched(this, stock.combinations(), options);
    }
}
