package rakeline.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import rakeline.desk.Kept;
import rakeline.desk.Recents;

/** The files opened last, kept in the background whenever they change. */
final class Recent {
    private final Kept<Recents> kept;
    private final Background background;
    private Recents recents;

    Recent(Kept<Recents> kept, Background background, Recents first) {
        this.kept = kept;
        this.background = background;
        this.recents = first;
    }

    Recents recents() {
        return recents;
    }

    List<Path> files() {
        return recents.files();
    }

    /**
     * Puts a file at the head.
     *
     * @param refused hears why it cannot be kept
     */
    void add(Path file, Consumer<String> refused) {
        Recents next = recents.opened(file);
        recents = next;
        background.run(
                () -> {
                    kept.keep(next);
                    return next;
                },
                done -> {},
                refused);
    }
}
