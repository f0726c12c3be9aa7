package rakeline.shell;

import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import rakeline.desk.Kept;

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
