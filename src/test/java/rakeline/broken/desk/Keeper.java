package rakeline.broken.desk;

import java.io.IOException;

/** Part of the house in which every rule is broken. */
public final class Keeper {
    private Keeper() {}

    public static int speak() throws IOException {
        System.out.println("nobody reads this");
        return System.in.read();
    }
}
