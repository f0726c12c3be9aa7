package rakeline.study.fit;

import java.util.Comparator;
import rakeline.geometry.parts.Part;

/**
 * A combination of parts, with what it is ranked by.
 *
 * @param exceeded how many limits it is beyond
 * @param distanceMm hoods to where they are wanted
 * @param order its place among all combinations, by the parts' numbers in the order of their keys
 */
record Candidate(
        int exceeded,
        double distanceMm,
        long order,
        Mount mount,
        Mount.Stack stack,
        Mount.Stem stem,
        Mount.Bar bar,
        Mount.Foot foot,
        Mount.Seat seat)
        implements Comparable<Candidate> {
    private static final Comparator<Candidate> BEST_FIRST = Comparator.comparingInt(Candidate::exceeded)
            .thenComparingDouble(Candidate::distanceMm)
            .thenComparingDouble(candidate -> candidate.stack.spacersMm())
            .thenComparingDouble(candidate -> candidate.stem.lengthMm())
            .thenComparingLong(Candidate::order);

    @Override
    public int compareTo(Candidate other) {
        return BEST_FIRST.compare(this, other);
    }

    Option option() {
        return mount.option(
                foot.geometry(),
                Part.together(stack.cover(), stack.spacers(), stem.part(), bar.part(), foot.part(), seat.part()));
    }
}
