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

    /** Whether a candidate of this rank may belong to them; spares making the others. */
    boolean mayTake(int exceeded, double distanceMm) {
        if (kept.size() < most) {
            return true;
        }
        Candidate worst = kept.element();
        return exceeded < worst.exceeded() || (exceeded == worst.exceeded() && distanceMm <= worst.distanceMm());
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
