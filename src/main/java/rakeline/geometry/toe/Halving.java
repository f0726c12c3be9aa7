package rakeline.geometry.toe;

import java.util.Queue;

/**
 * A search of the swept ring by halving patches, the most promising first, and leaving out those whose floor shows that
 * nothing better is on them (branch and bound: Land and Doig 1960).
 */
interface Halving {
    /**
     * Only coincidences come near this, as a ball that grazes the whole ring at once; the length found is then still one
     * that is met.
     */
    int MOST_HALVINGS = 40_000;

    SweptRing ring();

    Field field();

    /** Whether one spot is to be preferred to the best so far. */
    boolean better(Spot spot, Spot best);

    /** A floor that high is of no more interest than a higher one. */
    double ceiling(Spot best);

    /** Whether a patch can hold anything better. */
    boolean hopeful(Patch patch, Spot best);

    /** Whether the best so far will do, given the most promising patch that is left. */
    boolean settled(Patch next, Spot best);

    /**
     * Searches a range of steering angles, radians.
     *
     * @param known the best so far
     * @param open takes the patches that are left, the most promising first
     */
    default Spot halve(double fromSteer, double toSteer, Spot known, Queue<Patch> open) {
        Spot best = known;
        for (Patch patch : Patch.all(fromSteer, toSteer)) {
            best = look(patch, best, open);
        }
        for (int i = 0; i < MOST_HALVINGS && !open.isEmpty() && !settled(open.peek(), best); i++) {
            for (Patch half : open.remove().halves(ring())) {
                best = look(half, best, open);
            }
        }
        return best;
    }

    private Spot look(Patch patch, Spot known, Queue<Patch> open) {
        View view = View.of(ring(), field(), patch);
        Spot best = better(view.spot(), known) ? view.spot() : known;
        Patch floored = view.floored(ceiling(best));
        if (hopeful(floored, best) && !view.tiny()) {
            open.add(floored);
        }
        return best;
    }
}
