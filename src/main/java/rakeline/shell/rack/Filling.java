package rakeline.shell.rack;

/** Tells what a person chooses in lists from what is put into them. */
final class Filling {
    private boolean fills;

    /** Puts something into lists, which no person has chosen. */
    void fill(Runnable work) {
        fills = true;
        work.run();
        fills = false;
    }

    /** Does what a choice asks for, if a person has made it. */
    void chosen(Runnable work) {
        if (!fills) {
            work.run();
        }
    }
}
