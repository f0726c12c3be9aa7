package rakeline.shell;

import java.util.List;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import rakeline.desk.Preferences;
import rakeline.desk.Preferences.Theme;
import rakeline.shell.page.Bench;
import rakeline.shell.rack.RackStore;

/** What a person can prefer, with its keys. */
final class LookDeeds {
    private static final String MENU = "View";

    private final Bench bench;
    private final Taste taste;
    private final Vault vault;
    private final RackStore rack;
    private final Supplier<Face> face;
    private final Runnable rebuild;

    /**
     * @param rebuild builds all views anew, in the look that is preferred now
     */
    LookDeeds(Bench bench, Taste taste, Vault vault, RackStore rack, Supplier<Face> face, Runnable rebuild) {
        this.bench = bench;
        this.taste = taste;
        this.vault = vault;
        this.rack = rack;
        this.face = face;
        this.rebuild = rebuild;
    }

    List<Deed> all() {
        return List.of(
                on("Larger type", "ctrl EQUALS", Taste.larger(1)),
                on("Larger type (other key)", "ctrl PLUS", Taste.larger(1)),
                on("Smaller type", "ctrl MINUS", Taste.larger(-1)),
                on("Standard type size", "ctrl 0", Taste.larger(-100)),
                on("Light", "ctrl shift 1", before -> before.withTheme(Theme.LIGHT)),
                on("Dark", "ctrl shift 2", before -> before.withTheme(Theme.DARK)),
                on("High contrast", "ctrl shift 3", before -> before.withTheme(Theme.CONTRAST)));
    }

    private Deed on(String words, String key, UnaryOperator<Preferences> change) {
        return Deed.of(MENU, words, key, () -> prefer(change));
    }

    private void prefer(UnaryOperator<Preferences> change) {
        taste.change(change, bench::notice);
        rebuild.run();
    }

    /** Asks for all of it. */
    void ask() {
        new PreferencesDialog(
                        taste.look(),
                        vault.places().worksheets(),
                        taste.preferences(),
                        rack.state().lengths())
                .ask(face.get())
                .ifPresent(chosen -> {
                    rack.in(chosen.lengths());
                    prefer(before -> chosen.preferences());
                });
    }
}
