package rakeline.broken.geometry;

/** Part of the house in which every rule is broken. */
public final class Bicycle {
    private int changes;

    public int change() {
        return ++changes;
    }
}
