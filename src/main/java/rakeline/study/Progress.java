package rakeline.study;

import java.util.concurrent.CancellationException;

/** Is told by a long study how far it is, and says whether it goes on. */
@FunctionalInterface
public interface Progress {
    /** Nobody watches; the study runs to its end. */
    Progress UNWATCHED = share -> true;

    /**
     * Whether the study goes on. Called on the thread that runs it.
     *
     * @param share of the work that is done, 0 to 1
     */
    boolean goesOn(double share);

    /**
     * Goes on, or ends the study.
     *
     * @param share of the work that is done, 0 to 1
     * @throws CancellationException where it does not go on, or the thread is interrupted
     */
    default void check(double share) {
        if (!goesOn(share) || Thread.currentThread().isInterrupted()) {
            throw new CancellationException("the study was stopped");
        }
    }

    /** The progress of one of several equal parts that are done one after the other. */
    default Progress part(int part, int parts) {
        return share -> goesOn((part + share) / parts);
    }
}
