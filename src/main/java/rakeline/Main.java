package rakeline;

/** Starts the window or the command that the arguments ask for. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {}
}
