package rakeline.shell;

import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import rakeline.desk.Kept;
import rakeline.shell.page.Background;

/** A small thing that is remembered from one start to the next: read once, kept in the background whenever it changes. */
final class Remembered<T> {
    private final Kept<T> kept;
    private final Background background;
    private T now;

    Remembered(Kept<T> kept, Background background, T first) {
        this.kept = kept;
        this.background = background;
        this.now = first;
    }

    /**
     * Reads in the background what was kept; all that the background is given later comes after it.
     *
     * @param said hears why it could not be taken as it was
     */
    void recall(Consumer<String> said) {
        background.run(kept::recall, recalled -> take(recalled, said), said);
    }

    private void take(Kept.Recalled<T> recalled, Consumer<String> said) {
        now = recalled.value();
        if (!recalled.said().isEmpty()) {
            said.accept(recalled.said());
        }
    }

    T now() {
        return now;
    }

    /**
     * Changes and keeps it.
     *
     * @param refused hears why it cannot be kept
     */
    void change(UnaryOperator<T> change, Consumer<String> refused) {
        change(change, () -> {}, refused);
    }

    /** Changes and keeps it, and says when it is on the disk. */
    void change(UnaryOperator<T> change, Runnable done, Consumer<String> refused) {
        T next = change.apply(now);
        now = next;
        background.run(
                () -> {
                    kept.keep(next);
                    return next;
                },
                written -> done.run(),
                refused);
    }
}
