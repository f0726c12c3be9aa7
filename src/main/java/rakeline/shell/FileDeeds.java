package rakeline.shell;

import java.util.List;
import rakeline.shell.page.Bench;

/** What can be done with the page as a whole, with its keys. */
final class FileDeeds {
    private static final String MENU = "Page";

    private final Bench bench;
    private final Filing filing;
    private final Rescue rescue;
    private final HandoutMaker handouts;
    private final Questions questions;
    private final Runnable edit;

    /** @param edit lets the author type in the selected row */
    FileDeeds(Bench bench, Filing filing, Rescue rescue, HandoutMaker handouts, Questions questions, Runnable edit) {
        this.bench = bench;
        this.filing = filing;
        this.rescue = rescue;
        this.handouts = handouts;
        this.questions = questions;
        this.edit = edit;
    }

    List<Deed> all() {
        return List.of(
                Deed.of(MENU, "New page", "ctrl N", () -> filing.openNew(edit)),
                Deed.of(MENU, "Open…", "ctrl O", filing::open),
                Deed.of(MENU, "Save", "ctrl S", filing::save),
                Deed.of(MENU, "Save as…", "ctrl shift S", filing::saveAs),
                Deed.of(MENU, "Earlier versions…", "ctrl F9", rescue::chooseVersion),
                Deed.of(MENU, "Title…", "ctrl F2", this::retitle),
                Deed.of(MENU, "Handout…", "ctrl F10", handouts::askForFile),
                Deed.of(MENU, "Print…", "ctrl P", handouts::print),
                Deed.of(MENU, "Cancel the handout", "ctrl shift F10", handouts::giveUp)
                        .when(handouts::isPending));
    }

    private void retitle() {
        questions
                .title(bench.model().page().title())
                .ifPresent(title -> bench.act("title changed", page -> page.withTitle(title)));
    }
}
