package rakeline.shell;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** All that can be done on a page, with its key; menus, keys and the list of keys read this. */
final class Deeds {
    private final Bench bench;
    private final Steps steps;

    Deeds(Bench bench, Steps steps) {
        this.bench = bench;
        this.steps = steps;
    }

    /** Actions on rows and on the run; the window adds those on files and on itself. */
    List<Deed> onRows(Runnable edit, Runnable leave) {
        return Stream.of(edits(), rows(edit, leave), runs())
                .flatMap(List::stream)
                .toList();
    }

    private List<Deed> edits() {
        return List.of(
                Deed.of("Edit", "Undo", "ctrl Z", steps::undo).when(steps::canUndo),
                Deed.of("Edit", "Redo", "ctrl shift Z", steps::redo).when(steps::canRedo),
                Deed.of("Edit", "Redo, the other key", "ctrl Y", steps::redo).when(steps::canRedo));
    }

    private List<Deed> rows(Runnable edit, Runnable leave) {
        return List.of(
                Deed.of("Row", "Edit the row", "F2", edit).when(this::hasRow),
                Deed.of("Row", "Leave the row's text", "ESCAPE", leave).when(this::hasRow),
                Deed.of("Row", "Select the row above", "ctrl UP", () -> step(-1, leave))
                        .when(this::hasRow),
                Deed.of("Row", "Select the row below", "ctrl DOWN", () -> step(1, leave))
                        .when(this::hasRow),
                Deed.of("Row", "Add a note below", "ctrl shift N", () -> add(true, edit)),
                Deed.of("Row", "Add a snippet below", "ctrl shift J", () -> add(false, edit)),
                Deed.of("Row", "Move the row up", "alt UP", () -> move(-1)).when(this::hasRow),
                Deed.of("Row", "Move the row down", "alt DOWN", () -> move(1)).when(this::hasRow),
                Deed.of("Row", "Fold or unfold the snippet", "ctrl shift F", this::fold)
                        .when(this::hasSnippet),
                Deed.of("Row", "Let the row wait, or not", "ctrl shift W", this::waitOrNot)
                        .when(this::hasSnippet),
                Deed.of("Row", "Delete the row", "ctrl shift DELETE", this::delete)
                        .when(this::hasRow));
    }

    private List<Deed> runs() {
        return List.of(
                Deed.of("Run", "Run the row", "F5", bench::runSelected).when(this::hasSnippet),
                Deed.of("Run", "Run from here", "shift F5", bench::runFromSelected)
                        .when(this::hasRow),
                Deed.of("Run", "Run all", "ctrl F5", bench::runAll),
                Deed.of("Run", "Stop", "F8", bench::stop));
    }

    private PageModel model() {
        return bench.model();
    }

    private boolean hasRow() {
        return model().selectedRow().isPresent();
    }

    private boolean hasSnippet() {
        return model().selectedRow().filter(Row.Snippet.class::isInstance).isPresent();
    }

    private void step(int by, Runnable leave) {
        model().selected().ifPresent(id -> {
            List<Row> rows = model().rows();
            int to = Math.max(0, Math.min(rows.size() - 1, model().page().indexOf(id) + by));
            bench.select(rows.get(to).id());
            leave.run();
        });
    }

    private void add(boolean note, Runnable edit) {
        Worksheet page = model().page();
        String id = page.freshId();
        Row row = note ? new Row.Note(id, "") : Row.Snippet.of(id, "");
        Optional<Integer> place = model().selectedRow().map(selected -> page.indexOf(selected.id()) + 1);
        bench.act(
                note ? "note added" : "snippet added",
                before -> before.insert(place.orElse(before.rows().size()), row));
        bench.select(id);
        edit.run();
    }

    private void move(int by) {
        model().selected()
                .ifPresent(id -> bench.act(
                        by < 0 ? "row moved up" : "row moved down",
                        page -> page.move(id, Math.max(0, page.indexOf(id) + by))));
    }

    private void delete() {
        model().selected().ifPresent(id -> {
            int place = model().page().indexOf(id);
            bench.act("row deleted", page -> page.without(id));
            List<Row> rows = model().rows();
            if (!rows.isEmpty()) {
                bench.select(rows.get(Math.min(place, rows.size() - 1)).id());
            }
        });
    }

    private void fold() {
        onSnippet("row folded or unfolded", snippet -> snippet.folded(!snippet.folded()));
    }

    private void waitOrNot() {
        onSnippet("row waits or not", snippet -> snippet.waiting(!snippet.waits()));
    }

    private void onSnippet(String words, java.util.function.UnaryOperator<Row.Snippet> change) {
        model().selectedRow()
                .filter(Row.Snippet.class::isInstance)
                .map(Row.Snippet.class::cast)
                .ifPresent(snippet -> bench.act(words, page -> page.withRow(change.apply(snippet))));
    }
}
