package rakeline.shell;

import java.util.List;
import rakeline.shell.page.Bench;
import rakeline.worksheet.Worksheet;

/** How the page is looked at, with its keys. */
final class ViewDeeds {
    private static final String MENU = "View";

    private final Bench bench;
    private final Face face;
    private final Runnable showFigure;

    /**
     * @param showFigure puts one figure on the whole screen
     */
    ViewDeeds(Bench bench, Face face, Runnable showFigure) {
        this.bench = bench;
        this.face = face;
        this.showFigure = showFigure;
    }

    List<Deed> all() {
        return List.of(
                Deed.of(MENU, "Write", "ctrl 1", () -> bench.view(Worksheet.View.WRITE)),
                Deed.of(MENU, "Read", "ctrl 2", () -> bench.view(Worksheet.View.READ)),
                Deed.of(MENU, "Show", "ctrl 3", showFigure),
                Deed.of(MENU, "Shelf", "F7", face::toggleShelf),
                Deed.of(MENU, "Drawing", "shift F7", face::toggleDrawing),
                Deed.of(MENU, "Go to the dials", "ctrl D", face::goToDials),
                Deed.of(
                        MENU,
                        "Show only first lines of code, or all",
                        "ctrl shift R",
                        () -> face.ledger().turnBrief()),
                Deed.of(MENU, "Wider text", "alt RIGHT", () -> face.ledger().divide(0.05)),
                Deed.of(MENU, "Narrower text", "alt LEFT", () -> face.ledger().divide(-0.05)));
    }
}
