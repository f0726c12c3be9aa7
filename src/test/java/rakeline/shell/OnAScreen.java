package rakeline.shell;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension;
import java.lang.invoke.MethodHandles;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Puts the screen drawn in memory in place where the build has chosen it; the real one needs nothing. */
public final class OnAScreen implements BeforeAllCallback {
    @Override
    public void beforeAll(ExtensionContext context) throws IllegalAccessException {
        if (System.getProperty("awt.toolkit", "").endsWith(".CTCToolkit")) {
            MethodHandles.lookup().ensureInitialized(CacioExtension.class);
        }
    }
}
