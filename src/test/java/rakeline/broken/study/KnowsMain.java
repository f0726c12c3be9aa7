package rakeline.broken.study;

import rakeline.broken.Root;

/** Part of the house in which every rule is broken. */
public final class KnowsMain {
    private KnowsMain() {}

    public static void run() {
        Root.main(new String[0]);
    }
}
