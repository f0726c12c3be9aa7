package rakeline.shell;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.text.JTextComponent;
import rakeline.quantity.Refusal;
import rakeline.shell.page.Bench;
import rakeline.worksheet.Worksheet;

/** All that can be done on a page, with its key; menus, keys and the list of keys read this. */
final class Deeds {
    private final Bench bench;
    private final Supplier<Face> face;
    private final Steps steps;
    private final RowDeeds rows;

    /**
     * @param steps undoes in the page, or in the rack while that is at hand
     * @param face the views in force
     */
    Deeds(Bench bench, Steps steps, Supplier<Face> face) {
        this.bench = bench;
        this.steps = steps;
        this.face = face;
        rows = new RowDeeds(
                bench,
                () -> face.get().ledger().editSelected(),
                () -> face.get().ledger().leaveText());
    }

    /** Actions on the page's text, its rows and its run; the window adds those on files and on itself. */
    List<Deed> onPage() {
        return Stream.of(edits(), finds(), rows.all(), runs())
                .flatMap(List::stream)
                .toList();
    }

    private List<Deed> edits() {
        return List.of(
                Deed.of("Edit", "Undo", "ctrl Z", steps::undo).when(steps::canUndo),
                Deed.of("Edit", "Redo", "ctrl shift Z", steps::redo).when(steps::canRedo),
                Deed.of("Edit", "Redo (other key)", "ctrl Y", steps::redo).when(steps::canRedo),
                Deed.of("Edit", "Cut", "ctrl X", inHand("cut", JTextComponent::cut, rows::cut)),
                Deed.of("Edit", "Copy", "ctrl C", inHand("copy", JTextComponent::copy, rows::copy)),
                Deed.of("Edit", "Paste", "ctrl V", inHand("paste", JTextComponent::paste, this::paste)),
                Deed.of(
                        "Edit",
                        "Select all",
                        "ctrl A",
                        inHand("selectAll", JTextComponent::selectAll, rows::selectAll)));
    }

    /** With the text that has the keys, with the rack's table while the keys are there, else with rows. */
    private Runnable inHand(String name, Consumer<JTextComponent> text, Runnable onRows) {
        return TextOrRows.either(text, () -> {
            if (!face.get().rack().edit(name)) {
                onRows.run();
            }
        });
    }

    private void paste() {
        try {
            rows.paste();
        } catch (Refusal refusal) {
            bench.notice(refusal.getMessage());
        }
    }

    private List<Deed> finds() {
        return List.of(
                Deed.of(
                                "Edit",
                                "Find and replace",
                                "ctrl F",
                                () -> face.get().finds().open())
                        .when(this::isWriting),
                Deed.of("Edit", "Find next", "F3", () -> face.get().finds().step(1))
                        .when(this::isWriting),
                Deed.of(
                                "Edit",
                                "Find previous",
                                "shift F3",
                                () -> face.get().finds().step(-1))
                        .when(this::isWriting),
                Deed.of(
                                "Edit",
                                "Comment out or uncomment",
                                "ctrl SLASH",
                                () -> face.get().ledger().toggleComment())
                        .when(() -> face.get().ledger().isInSnippet()));
    }

    private boolean isWriting() {
        return bench.model().view() == Worksheet.View.WRITE;
    }

    private List<Deed> runs() {
        return List.of(
                Deed.of("Run", "Run the row", "F5", bench::runSelected).when(rows::hasSnippet),
                Deed.of("Run", "Run from here", "shift F5", bench::runFromSelected)
                        .when(rows::hasRow),
                Deed.of("Run", "Run all", "ctrl F5", bench::runAll),
                Deed.of("Run", "Stop", "F8", bench::stop));
    }
}
