package rakeline.study.fit;

import java.util.Comparator;

/**
 * What a combination of parts is ranked by, in this order; the smaller comes first.
 *
 * @param beyond whether it is beyond a limit
 * @param beyondToleranceMm how much further than the tolerance its hoods are from where they are wanted
 * @param tightest what is left to its tightest limit, in units of its uncertainty; the more the better
 * @param changes how many kinds of parts differ from those on the bike
 * @param distanceMm hoods to where they are wanted
 * @param order its place among all combinations, by the parts' numbers in the order of their keys
 */
record Rank(
        boolean beyond,
        double beyondToleranceMm,
        double tightest,
        int changes,
        double distanceMm,
        double spacersMm,
        double stemLengthMm,
        long order)
        implements Comparable<Rank> {
    private static final Comparator<Rank> BEST_FIRST = Comparator.comparing(Rank::beyond)
            .thenComparingDouble(Rank::beyondToleranceMm)
            .thenComparingDouble(rank -> -rank.tightest)
            .thenComparingInt(Rank::changes)
            .thenComparingDouble(Rank::distanceMm)
            .thenComparingDouble(Rank::spacersMm)
            .thenComparingDouble(Rank::stemLengthMm)
            .thenComparingLong(Rank::order);

    @Override
    public int compareTo(Rank other) {
        return BEST_FIRST.compare(this, other);
    }
}
