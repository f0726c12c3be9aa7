package rakeline.shell;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Row;
import rakeline.worksheet.RowEdits;
import rakeline.worksheet.Worksheet;

/** What can be done with rows. */
final class RowDeeds {
    private final Bench bench;
    private final Runnable edit;
    private final Runnable leave;

    /**
     * @param edit lets the author type in the selected row
     * @param leave puts the focus on the selected row itself
     */
    RowDeeds(Bench bench, Runnable edit, Runnable leave) {
        this.bench = bench;
        this.edit = edit;
        this.leave = leave;
    }

    List<Deed> all() {
        return List.of(
                Deed.of("Row", "Edit the row", "F2", edit).when(this::hasRow),
                Deed.of("Row", "Leave the row's text", "ESCAPE", leave).when(this::hasRow),
                Deed.of("Row", "Select the row above", "ctrl UP", () -> step(-1, false))
                        .when(this::hasRow),
                Deed.of("Row", "Select the row below", "ctrl DOWN", () -> step(1, false))
                        .when(this::hasRow),
                Deed.of("Row", "Extend the selection up", "shift UP", () -> step(-1, true))
                        .when(this::hasRow),
                Deed.of("Row", "Extend the selection down", "shift DOWN", () -> step(1, true))
                        .when(this::hasRow),
                Deed.of("Row", "Add a note below", "ctrl shift N", () -> add(true)),
                Deed.of("Row", "Add a snippet below", "ctrl shift J", () -> add(false)),
                Deed.of("Row", "Move the row up", "alt UP", () -> move(-1)).when(this::hasRow),
                Deed.of("Row", "Move the row down", "alt DOWN", () -> move(1)).when(this::hasRow),
                Deed.of("Row", "Hide as an answer, or unhide", "ctrl shift F", this::fold)
                        .when(this::hasRow),
                Deed.of("Row", "Open or close all answers", "ctrl shift Y", bench::turnAnswers)
                        .when(this::hasRow),
                Deed.of("Row", "Run only when asked, or automatically", "ctrl shift W", this::waitOrNot)
                        .when(this::hasSnippet),
                Deed.of("Row", "Delete the row", "ctrl shift DELETE", this::delete)
                        .when(this::hasRow));
    }

    private PageModel model() {
        return bench.model();
    }

    private List<String> selection() {
        return model().selection();
    }

    boolean hasRow() {
        return model().selectedRow().isPresent();
    }

    boolean hasSnippet() {
        return model().selectedRow().filter(Row.Snippet.class::isInstance).isPresent();
    }

    private void step(int by, boolean more) {
        model().selected().ifPresent(id -> {
            List<Row> rows = model().rows();
            int to = Math.max(0, Math.min(rows.size() - 1, model().page().indexOf(id) + by));
            if (more) {
                bench.extend(rows.get(to).id());
            } else {
                bench.select(rows.get(to).id());
            }
            leave.run();
        });
    }

    private void add(boolean note) {
        Worksheet page = model().page();
        String id = page.freshId();
        Row row = note ? new Row.Note(id, "") : Row.Snippet.of(id, "");
        int place = placeBelow(page);
        bench.act(note ? "note added" : "snippet added", before -> before.insert(place, row));
        bench.select(id);
        edit.run();
    }

    /** The place below the selected rows, or the end. */
    private int placeBelow(Worksheet page) {
        List<String> selected = selection();
        return selected.isEmpty() ? page.rows().size() : page.indexOf(selected.get(selected.size() - 1)) + 1;
    }

    private void move(int by) {
        List<String> moved = selection();
        bench.act(by < 0 ? "moved up" : "moved down", page -> RowEdits.step(page, moved, by));
    }

    void delete() {
        remove("deleted");
    }

    private void remove(String words) {
        List<String> gone = selection();
        if (!gone.isEmpty()) {
            int place = model().page().indexOf(gone.get(0));
            bench.act(
                    gone.size() == 1 ? "row " + words : gone.size() + " rows " + words,
                    page -> RowEdits.without(page, gone));
            List<Row> rows = model().rows();
            if (!rows.isEmpty()) {
                bench.select(rows.get(Math.min(place, rows.size() - 1)).id());
            }
            leave.run();
        }
    }

    void cut() {
        copy();
        remove("cut");
    }

    void copy() {
        new Clippings(RowEdits.rows(model().page(), selection())).copy();
        bench.say(selection().size() == 1 ? "row copied" : selection().size() + " rows copied");
    }

    /** Puts what the clipboard holds below the selected rows, and selects it. */
    void paste() {
        List<Row> rows = Clippings.onClipboard();
        Worksheet page = model().page();
        int place = placeBelow(page);
        if (!rows.isEmpty()) {
            bench.act(
                    rows.size() == 1 ? "row pasted" : rows.size() + " rows pasted",
                    before -> RowEdits.insert(before, place, rows));
            bench.select(model().rows().get(place).id());
            bench.extend(model().rows().get(place + rows.size() - 1).id());
            leave.run();
        }
    }

    void selectAll() {
        List<Row> rows = model().rows();
        if (!rows.isEmpty()) {
            bench.select(rows.get(0).id());
            bench.extend(rows.get(rows.size() - 1).id());
            leave.run();
        }
    }

    private void fold() {
        boolean folded = model().selectedRow().map(Row::folded).orElse(false);
        onRows(folded ? "unfolded" : "folded away", selection(), row -> row.folded(!folded));
    }

    private void waitOrNot() {
        boolean waits = selectedSnippet().map(Row.Snippet::waits).orElse(false);
        onSnippets(
                waits ? "runs automatically" : "runs only when asked", selection(), snippet -> snippet.waiting(!waits));
    }

    private Optional<Row.Snippet> selectedSnippet() {
        return model().selectedRow().filter(Row.Snippet.class::isInstance).map(Row.Snippet.class::cast);
    }

    private void onSnippets(String words, List<String> ids, UnaryOperator<Row.Snippet> change) {
        onRows(words, ids, row -> row instanceof Row.Snippet snippet ? change.apply(snippet) : row);
    }

    private void onRows(String words, List<String> ids, UnaryOperator<Row> change) {
        bench.act(
                words,
                page -> page.withRows(page.rows().stream()
                        .map(row -> ids.contains(row.id()) ? change.apply(row) : row)
                        .toList()));
    }
}
