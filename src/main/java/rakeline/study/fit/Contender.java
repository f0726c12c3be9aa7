package rakeline.study.fit;

import java.util.List;
import rakeline.handling.Ride;
import rakeline.study.Varied;

/**
 * A bike in a comparison.
 *
 * @param origin whose numbers it is made of: two contenders of one origin are the same bike, changed, and share the
 *     errors of its numbers
 * @param changed what was changed of it, and in which way
 */
public record Contender(Ride ride, int origin, List<Varied> changed) {
    public Contender {
        changed = List.copyOf(changed);
    }

    /** A bike as it is. */
    public Contender(Ride ride, int origin) {
        this(ride, origin, List.of());
    }
}
