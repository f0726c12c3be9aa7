package rakeline.shell;

import java.nio.file.Path;
import java.time.Duration;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import rakeline.desk.Preferences;
import rakeline.engine.Session;
import rakeline.figure.paint.Palette;
import rakeline.shell.look.Look;

/** The preferences in force. */
final class Taste {
    private static final int STEP_PERCENT = 10;

    private final Remembered<Preferences> preferences;

    Taste(Remembered<Preferences> preferences) {
        this.preferences = preferences;
    }

    Preferences preferences() {
        return preferences.now();
    }

    /**
     * Changes and keeps them.
     *
     * @param refused hears why they cannot be kept
     */
    void change(UnaryOperator<Preferences> change, Consumer<String> refused) {
        preferences.change(change, refused);
    }

    /** Type larger or smaller by so many steps, kept within what is accepted. */
    static UnaryOperator<Preferences> larger(int steps) {
        return before -> before.withTypePercent(Math.max(
                Preferences.SMALLEST_TYPE,
                Math.min(Preferences.LARGEST_TYPE, before.typePercent() + steps * STEP_PERCENT)));
    }

    /**
     * The user's Rakeline folder.
     *
     * @param usual where none is preferred
     */
    Path folder(Path usual) {
        return preferences().folder().map(Path::of).orElse(usual);
    }

    /**
     * What rows may read and take.
     *
     * @param usual the user's Rakeline folder where none is preferred
     */
    Session.Settings settings(Path usual) {
        return settings(preferences(), usual);
    }

    static Session.Settings settings(Preferences preferred, Path usual) {
        return Session.Settings.standard()
                .withUserFolder(preferred.folder().map(Path::of).orElse(usual))
                .withTimeLimit(Duration.ofSeconds(preferred.timeLimitSeconds()))
                .withHeap(preferred.workerMegabytes())
                .followingLinks(preferred.followsLinks());
    }

    /** Colours and size as preferred. */
    Look look() {
        Palette palette = switch (preferences().theme()) {
            case DARK -> Palette.DARK;
            case CONTRAST -> Palette.CONTRAST;
            case LIGHT -> Palette.LIGHT;
        };
        return new Look(palette, preferences().typePercent() / 100.0);
    }
}
