package rakeline.broken.help;

import java.io.IOException;
import rakeline.broken.desk.Keeper;

/** Part of the house in which every rule is broken. */
public final class KnowsDesk {
    private KnowsDesk() {}

    public static void ask() throws IOException {
        Keeper.speak();
    }
}
