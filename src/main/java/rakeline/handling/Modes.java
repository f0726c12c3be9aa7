package rakeline.handling;

import java.util.List;
import java.util.stream.Stream;

/**
 * The four eigenvalues at a speed, followed continuously from standstill.
 *
 * @param weave the root of the weave pair with positive frequency; where both are real, the greater
 * @param weaveTwin the other of that pair
 * @param capsize the greater of the remaining two; where they are a pair, the one with positive frequency
 * @param castering the other
 */
public record Modes(double speedMps, Root weave, Root weaveTwin, Root capsize, Root castering) {

    /** In that order. */
    public List<Root> all() {
        return List.of(weave, weaveTwin, capsize, castering);
    }

    /** Whether every motion dies out. */
    public boolean selfStable() {
        return Stream.of(weave, weaveTwin, capsize, castering).allMatch(root -> root.re() < 0);
    }
}
