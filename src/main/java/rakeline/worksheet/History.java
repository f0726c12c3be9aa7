package rakeline.worksheet;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A worksheet with the steps that led to it, to be undone and done again. Never changes: every call returns the next
 * history.
 *
 * <p>One burst of typing in a row, one drag of a dial, one action on a row is one step: edits in a row that carry the
 * same key join, until another key, a {@link #pause}, an undo or a save.
 */
public final class History {
    /** How many steps can be undone. */
    public static final int DEPTH = 500;

    private final List<Worksheet> before;
    private final Worksheet now;
    private final List<Worksheet> after;
    private final Worksheet saved;
    private final Optional<String> open;

    private History(
            List<Worksheet> before, Worksheet now, List<Worksheet> after, Worksheet saved, Optional<String> open) {
        this.before = before;
        this.now = now;
        this.after = after;
        this.saved = saved;
        this.open = open;
    }

    /** The history of a page just read or just begun. */
    public static History of(Worksheet page) {
        return new History(List.of(), page, List.of(), page, Optional.empty());
    }

    public Worksheet now() {
        return now;
    }

    /** A step of its own; none where nothing changes. */
    public History edit(Worksheet next) {
        return step(next, Optional.empty());
    }

    /**
     * A step that joins the one before where that carries the same key and is still open.
     *
     * @param key as {@code typing r3} or {@code dial head}
     */
    public History edit(String key, Worksheet next) {
        boolean joins = open.equals(Optional.of(key)) && after.isEmpty();
        return joins ? new History(before, next, after, saved, open) : step(next, Optional.of(key));
    }

    private History step(Worksheet next, Optional<String> key) {
        return next.equals(now) ? this : new History(last(append(before, now)), next, List.of(), saved, key);
    }

    /** Ends the open step: typing paused, the dial was let go. */
    public History pause() {
        return new History(before, now, after, saved, Optional.empty());
    }

    public boolean canUndo() {
        return !before.isEmpty();
    }

    public boolean canRedo() {
        return !after.isEmpty();
    }

    /** One step back; the same where there is none. */
    public History undo() {
        return canUndo() ? moved(allButLast(before), before.get(before.size() - 1), append(after, now)) : this;
    }

    /** One step forward again; the same where there is none. */
    public History redo() {
        return canRedo() ? moved(append(before, now), after.get(after.size() - 1), allButLast(after)) : this;
    }

    private History moved(List<Worksheet> newBefore, Worksheet newNow, List<Worksheet> newAfter) {
        return new History(newBefore, newNow, newAfter, saved, Optional.empty());
    }

    /** Every version opens in this view from now on: how a page is looked at is no step and nothing to save by itself. */
    public History viewed(Worksheet.View view) {
        return new History(viewed(before, view), now.withView(view), viewed(after, view), saved.withView(view), open);
    }

    private static List<Worksheet> viewed(List<Worksheet> pages, Worksheet.View view) {
        return pages.stream().map(page -> page.withView(view)).toList();
    }

    /** The version that stands was saved. */
    public History saved() {
        return saved(now);
    }

    /** This version was saved, which need not be the one that stands by now. */
    public History saved(Worksheet version) {
        return new History(before, now, after, version, Optional.empty());
    }

    /** True where what stands equals what was saved, whichever way it came about. */
    public boolean isSaved() {
        return now.equals(saved);
    }

    /** The same of what an edit leaves of both. */
    public boolean isSaved(UnaryOperator<Worksheet> edit) {
        return edit.apply(now).equals(edit.apply(saved));
    }

    private static List<Worksheet> append(List<Worksheet> pages, Worksheet page) {
        return Stream.concat(pages.stream(), Stream.of(page)).toList();
    }

    private static List<Worksheet> allButLast(List<Worksheet> pages) {
        return List.copyOf(pages.subList(0, pages.size() - 1));
    }

    private static List<Worksheet> last(List<Worksheet> pages) {
        return List.copyOf(pages.subList(Math.max(0, pages.size() - DEPTH), pages.size()));
    }
}
