package rakeline.engine.jshell;

/** How a worker came to its end, in words that follow "this row …". */
final class Ending {
    /** What {@code -XX:+ExitOnOutOfMemoryError} ends with. */
    private static final int OUT_OF_MEMORY = 3;

    /** What the worker itself ends with, see {@link RowThreads}. */
    static final int TOO_MANY_THREADS = 4;

    static final int NO_ROWS = 5;

    private static final int SIGNAL = 128;
    private static final int KILL = SIGNAL + 9;
    private static final int TERMINATE = SIGNAL + 15;

    private Ending() {}

    static String of(int exitValue, boolean orderly, boolean killedByUs, int heapMegabytes) {
        if (killedByUs) {
            return "did not stop when asked, so its worker was ended";
        }
        if (exitValue == KILL || exitValue == TERMINATE) {
            return "was running when its worker was killed from outside";
        }
        if (orderly) {
            return "called System.exit(" + exitValue + "), which ends the worker";
        }
        if (exitValue == OUT_OF_MEMORY) {
            return "ran out of memory; a worker may use " + heapMegabytes + " MB";
        }
        if (exitValue == TOO_MANY_THREADS) {
            return "had more than " + RowThreads.AT_ONCE + " threads running at once";
        }
        if (exitValue == NO_ROWS) {
            return "ended the thread that runs rows, so its worker was ended";
        }
        return "ended its worker at once, with exit value " + exitValue
                + ", as Runtime.halt or a crash of Java itself does";
    }
}
