package rakeline.shell;

import java.awt.Desktop;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import rakeline.desk.Places;
import rakeline.desk.SafeFile;

/** The page of every input and measure, which the build makes, for the machine's browser. */
final class KeysPage {
    private static final String RESOURCE = "/rakeline/help/keys.html";

    private KeysPage() {}

    /** The page's text, as the build made it. */
    static byte[] content() {
        try (InputStream in = KeysPage.class.getResourceAsStream(RESOURCE)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the page is part of the program", e);
        }
    }

    /** Puts the page where a browser can read it, and opens it there; says where it is. */
    static String open(SafeFile disk, Places places) {
        Path file = places.state().resolve("inputs-and-measures.html");
        try {
            Files.createDirectories(places.state());
            disk.write(file, content());
            if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                Desktop.getDesktop().browse(file.toUri());
            }
        } catch (IOException e) {
            return "The page is in " + file + "; no browser opened it: " + e.getMessage() + ".";
        }
        return "What every input and measure means is in " + file + ".";
    }
}
