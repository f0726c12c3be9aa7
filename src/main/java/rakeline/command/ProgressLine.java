package rakeline.command;

import java.io.PrintStream;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import rakeline.study.Progress;

/**
 * How far a long command is, on one line of a terminal that is written over and taken away at the end. A command that is
 * soon done shows none.
 */
final class ProgressLine implements Progress {
    private static final long NANOS = 1_000_000_000;

    /** A command that takes no longer shows nothing. */
    private static final long QUIET_NANOS = NANOS;

    private static final long BETWEEN_NANOS = NANOS / 4;
    private static final int WIDTH = 60;

    /** A share that says enough about the time that is left. */
    private static final double TELLING = 0.02;

    private final String command;
    private final PrintStream terminal;
    private final boolean isWatched;
    private final LongSupplier nanos;
    private final BooleanSupplier isStopped;
    private final long began;
    private long next;
    private boolean isShown;

    /**
     * A line for a command.
     *
     * @param isWatched whether the stream is a terminal; where it is not, nothing is ever written
     * @param nanos a clock
     * @param isStopped whether someone has asked the command to end
     */
    ProgressLine(
            String command, PrintStream terminal, boolean isWatched, LongSupplier nanos, BooleanSupplier isStopped) {
        this.command = command;
        this.terminal = terminal;
        this.isWatched = isWatched;
        this.nanos = nanos;
        this.isStopped = isStopped;
        this.began = nanos.getAsLong();
        this.next = began + QUIET_NANOS;
    }

    @Override
    public synchronized boolean goesOn(double share) {
        long now = nanos.getAsLong();
        if (share >= 1) {
            clear();
        } else if (isWatched && now >= next && !isStopped.getAsBoolean()) {
            show(words(share, now - began));
            next = now + BETWEEN_NANOS;
        }
        return !isStopped.getAsBoolean();
    }

    /** Takes the line away. */
    synchronized void clear() {
        if (isShown) {
            terminal.print("\r" + " ".repeat(WIDTH) + "\r");
            terminal.flush();
            isShown = false;
        }
    }

    private void show(String words) {
        terminal.print("\r" + words + " ".repeat(Math.max(0, WIDTH - words.length())));
        terminal.flush();
        isShown = true;
    }

    private String words(double share, long nanosSoFar) {
        String done = command + ": " + (int) Math.floor(100 * share) + " %";
        double seconds = nanosSoFar / (double) NANOS;
        return share < TELLING ? done : done + ", about " + time(seconds * (1 - share) / share) + " left";
    }

    private static String time(double seconds) {
        long whole = Math.max(1, Math.round(seconds));
        return whole < 100 ? whole + " s" : Math.round(whole / 60.0) + " min";
    }
}
