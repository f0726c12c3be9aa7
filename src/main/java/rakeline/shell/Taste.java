package rakeline.shell;

import java.util.function.UnaryOperator;
import rakeline.desk.Kept;
import rakeline.desk.Preferences;
import rakeline.figure.paint.Palette;
import rakeline.shell.look.Look;

/** The preferences in force: read once, kept in the background whenever they change. */
final class Taste {
    private static final int STEP_PERCENT = 10;

    private final Kept<Preferences> kept;
    private final Background background;
    private Preferences preferences;

    Taste(Kept<Preferences> kept, Background background, Preferences first) {
        this.kept = kept;
        this.background = background;
        this.preferences = first;
    }

    Preferences preferences() {
        return preferences;
    }

    /**
     * Changes and keeps them.
     *
     * @param refused hears why they cannot be kept
     */
    void change(UnaryOperator<Preferences> change, java.util.function.Consumer<String> refused) {
        Preferences next = change.apply(preferences);
        preferences = next;
        background.run(
                () -> {
                    kept.keep(next);
                    return next;
                },
                done -> {},
                refused);
    }

    /** Type larger or smaller by so many steps, kept within what is accepted. */
    static UnaryOperator<Preferences> larger(int steps) {
        return before -> before.withTypePercent(Math.max(
                Preferences.SMALLEST_TYPE,
                Math.min(Preferences.LARGEST_TYPE, before.typePercent() + steps * STEP_PERCENT)));
    }

    /** Colours and size as preferred; where the system says nothing, light. */
    Look look() {
        Palette palette = switch (preferences.theme()) {
            case DARK -> Palette.DARK;
            case CONTRAST -> Palette.CONTRAST;
            case LIGHT, SYSTEM -> Palette.LIGHT;
        };
        return new Look(palette, preferences.typePercent() / 100.0);
    }
}
