package rakeline.study.fit;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** The best candidates so far, up to a number of them. */
final class Best {
    private final int most;
    private final PriorityQueue<Candidate> kept = new PriorityQueue<>(Comparator.reverseOrder());

    Best(int most) {
        this.most = most;
    }

    /** Whether a candidate of this rank belongs to them; spares making the others. */
    boolean takes(Rank rank) {
        return kept.size() < most || rank.compareTo(kept.element().rank()) < 0;
    }

    /** Whether any candidate that is so far beyond the tolerance can belong to them. */
    boolean mayTake(boolean beyond, double beyondToleranceMm) {
        if (kept.size() < most) {
            return true;
        }
        Rank worst = kept.element().rank();
        return beyond == worst.beyond() ? beyondToleranceMm <= worst.beyondToleranceMm() : !beyond;
    }

    void take(Candidate candidate) {
        kept.add(candidate);
        if (kept.size() > most) {
            kept.remove();
        }
    }

    List<Candidate> ranked() {
        return kept.stream().sorted().toList();
    }
}
