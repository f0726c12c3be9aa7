package rakeline.broken;

/** Part of the house in which every rule is broken. */
public final class Root {
    private Root() {}

    public static void main(String[] arguments) {
        System.out.println("the root may speak");
    }
}
