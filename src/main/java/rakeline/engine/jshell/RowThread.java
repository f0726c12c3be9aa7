package rakeline.engine.jshell;

/** The worker's thread that runs rows. */
final class RowThread extends Thread {
    /** What stops a row; the host finds it through the debugger, by this name. */
    final Halted halted = new Halted();

    RowThread(ThreadGroup group, Runnable work) {
        super(group, work, "rows");
        setDaemon(true);
    }
}
