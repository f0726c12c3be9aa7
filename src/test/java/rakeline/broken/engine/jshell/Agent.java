package rakeline.broken.engine.jshell;

/** Part of the house in which every rule is broken. */
public final class Agent {
    private Agent() {}

    public static void speak() {
        System.out.flush();
    }
}
