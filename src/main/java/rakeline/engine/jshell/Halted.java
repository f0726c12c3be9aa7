package rakeline.engine.jshell;

/** Thrown into a running snippet by the host, through the debugger, to stop it. */
final class Halted extends Error {
    private static final long serialVersionUID = 1L;

    Halted() {
        super("stopped", null, false, false);
    }
}
