package rakeline.study.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rakeline.geometry.parts.Part;
import rakeline.quantity.Input;

/**
 * A combination of parts with its rank.
 *
 * @param others posts that put the saddle on the same point, best first
 */
record Candidate(
        Rank rank,
        Mount mount,
        Mount.Stack stack,
        Mount.Stem stem,
        Mount.Bar bar,
        Mount.Foot foot,
        Mount.Seat seat,
        List<Mount.Seat> others)
        implements Comparable<Candidate> {
    Candidate {
        others = List.copyOf(others);
    }

    @Override
    public int compareTo(Candidate other) {
        return rank.compareTo(other.rank);
    }

    Option option() {
        Map<Input, Double> parts =
                new HashMap<>(Part.together(stack.cover(), stack.spacers(), stem.part(), foot.part(), seat.part()));
        parts.putAll(bar.part().numbers());
        return mount.option(this, parts);
    }
}
