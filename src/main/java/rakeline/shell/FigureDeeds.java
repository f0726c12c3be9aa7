package rakeline.shell;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rakeline.shell.figures.FigureCopies;
import rakeline.shell.figures.FigureView;
import rakeline.shell.look.Look;
import rakeline.shell.page.Bench;

/** What can be done with the figure of the row at hand, with its keys. */
final class FigureDeeds {
    private static final String MENU = "Page";

    private final Bench bench;
    private final Look look;
    private final Face face;

    FigureDeeds(Bench bench, Look look, Face face) {
        this.bench = bench;
        this.look = look;
        this.face = face;
    }

    List<Deed> all() {
        return List.of(
                Deed.of(MENU, "Hold something else in the row's figure…", "ctrl shift H", this::hold)
                        .when(() -> figure().isPresent()),
                on("Copy the row's figure as a picture", "ctrl shift C", FigureCopies::picture),
                on("Copy the row's figure as SVG", "ctrl shift G", FigureCopies::vectors),
                on("Copy the row's figure as a table", "ctrl shift T", FigureCopies::table),
                on("Show the row's figure as a table", "ctrl shift U", FigureCopies::show),
                on("Save the row's figure to a file…", "ctrl shift P", FigureCopies::write));
    }

    private Optional<FigureView> figure() {
        return face.ledger().selectedFigure();
    }

    /** Lets the person hold something else in the sweep of the row at hand. */
    void hold() {
        bench.model().selectedRow().ifPresent(row -> new HeldChoice(bench, look).ask(face, row));
    }

    private Deed on(String words, String key, Function<FigureCopies, String> work) {
        return Deed.of(
                        MENU,
                        words,
                        key,
                        () -> figure().map(FigureView::copies).map(work).ifPresent(bench::say))
                .when(() -> figure().isPresent());
    }
}
