package rakeline.study;

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
}
