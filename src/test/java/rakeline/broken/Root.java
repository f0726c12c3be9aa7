package rakeline.broken;

import java.awt.GraphicsEnvironment;

/** Part of the house in which every rule is broken. */
public final class Root {
    private Root() {}

    public static void main(String[] arguments) {
        System.out.println("the root may ask and speak: " + GraphicsEnvironment.isHeadless());
    }
}
