package rakeline.shell.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rakeline.engine.Layout;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.figure.Drawing;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

class BesideTest {
    private static final Result CHART = Result.Value.of("a chart", Double.NaN);
    private static final Worksheet PAGE = Worksheet.empty("Page")
            .withRows(List.of(
                    new Row.Note("title", "# Title"),
                    Row.Snippet.of("frames", "m"),
                    Row.Snippet.of("dialled", "it"),
                    Row.Snippet.of("over", "draw(it, m)")));
    private static final PageModel RUN = PageModel.of(PAGE, new Origin.New(), true)
            .after(drawn("frames", List.of()))
            .after(drawn("dialled", List.of("head")))
            .after(drawn("over", List.of("head")));

    private static Outcome drawn(String id, List<String> follows) {
        Result side = new Result.Shown(side(id));
        return new Outcome(id, id, State.FRESH, "", "", Optional.of(side), List.of(), follows);
    }

    private static Drawing side(String title) {
        return new Drawing("Side view", title, List.of(), List.of(), "", List.of());
    }

    private static String beside(PageModel page, String selected) {
        return Beside.of(page.selecting(Optional.of(selected))).get("Side view").title();
    }

    @Test
    void theLastDrawingAtOrAboveTheSelectedRowStandsBesideThePage() {
        assertThat(beside(RUN, "frames")).isEqualTo("frames");
        assertThat(beside(RUN, "over")).isEqualTo("over");
    }

    @Test
    void whereNoneStandsAboveItIsTheFirstThatFollowsADial() {
        assertThat(beside(RUN, "title")).isEqualTo("dialled");
    }

    @Test
    void whereNoneFollowsADialEitherItIsTheFirst() {
        PageModel still = PageModel.of(PAGE, new Origin.New(), true)
                .after(drawn("frames", List.of()))
                .after(drawn("over", List.of()));
        assertThat(beside(still, "title")).isEqualTo("frames");
    }

    @Test
    void aPageWithoutDrawingsHasNoneBesideIt() {
        assertThat(Beside.of(PageModel.of(PAGE, new Origin.New(), true))).isEmpty();
    }

    private static final Worksheet TOES = Worksheet.empty("Toes")
            .withRows(List.of(
                    Row.Snippet.of("frame", "Bike frame = bike(…);"),
                    Row.Snippet.of("other", "Bike other = bike(…);"),
                    Row.Snippet.of("it", "double tyre = dial(…); Bike it = frame.with(…);"),
                    Row.Snippet.of("foot", "drawFoot(it, 12)"),
                    Row.Snippet.of("still", "sweep(frame)"),
                    Row.Snippet.of("moved", "sweep(it)"),
                    Row.Snippet.of("both", "measures(frame, it)"),
                    Row.Snippet.of("made", "Bike made = …; Bike again = …;"),
                    Row.Snippet.of("own", "sweep(made)"),
                    Row.Snippet.of("sweeping", "Sweeping sweeping = sweep(other)"),
                    Row.Snippet.of("through", "sweeping.chart()"),
                    Row.Snippet.of("pair", "Bike one = …; Bike two = …; draw(one, two)"),
                    Row.Snippet.of("limits", "limitsOf(one, two)"),
                    Row.Snippet.of("all", "measures(frame, other)"),
                    Row.Snippet.of("laid", "draw(frame, other)")));
    private static final PageModel WALKED = PageModel.of(TOES, new Origin.New(), true)
            .after(row("frame", bike("frame"), List.of(), List.of()))
            .after(row("other", bike("other"), List.of(), List.of()))
            .after(row("it", bike("it"), List.of("tyre"), List.of("frame")))
            .after(row("foot", new Result.Shown(side("foot of it")), List.of("tyre"), List.of("it")))
            .after(row("still", CHART, List.of(), List.of("frame")))
            .after(row("moved", CHART, List.of("tyre"), List.of("it", "it.tyre")))
            .after(row("both", CHART, List.of("tyre"), List.of("frame", "it")))
            .after(row("made", bike("again"), List.of(), List.of()))
            .after(row("own", CHART, List.of(), List.of("made.inner")))
            .after(row("sweeping", Result.Value.of("a sweep", Double.NaN), List.of(), List.of("other")))
            .after(row("through", CHART, List.of(), List.of("sweeping")))
            .after(row("pair", new Result.Shown(side("one and two")), List.of(), List.of("frame")))
            .after(row("limits", CHART, List.of(), List.of("pair.one", "pair.two")))
            .after(row("all", CHART, List.of(), List.of("frame", "other")))
            .after(row("laid", new Result.Shown(side("frame and other")), List.of(), List.of("frame", "other")));

    /** @param takes the names of rows, or of what stands within a row behind its name and a full stop */
    private static Outcome row(String id, Result result, List<String> follows, List<String> takes) {
        Map<String, Double> numbers = follows.isEmpty() ? Map.of() : Map.of("tyre", 28.0);
        List<Layout.Need> needs = takes.stream()
                .map(taken -> new Layout.Need(taken.replaceFirst("^.*[.]", ""), taken.replaceFirst("[.].*$", "")))
                .toList();
        return new Outcome(id, id, State.FRESH, "", "", Optional.of(result), List.of(), follows, needs, numbers);
    }

    private static Result bike(String name) {
        return new Result.Value(name, Double.NaN, List.of(side(name)));
    }

    private static Optional<String> besideFigure(String row) {
        return Optional.ofNullable(Beside.figure(WALKED, row).get("Side view")).map(Drawing::title);
    }

    @Test
    void aFigureThatFollowsNoDialStandsBesideItsOwnBikeNotTheDialledOne() {
        assertThat(besideFigure("still")).contains("frame");
    }

    @Test
    void aFigureOfTheDialledBikeStandsBesideWhatTheAuthorDrewOfIt() {
        assertThat(besideFigure("moved")).contains("foot of it");
    }

    @Test
    void ofTwoBikesTheOneThatFollowsTheDialsIsDrawn() {
        assertThat(besideFigure("both")).contains("foot of it");
    }

    @Test
    void aFigureOfABikeThatNothingDrawsStandsAlone() {
        assertThat(besideFigure("own")).isEmpty();
    }

    @Test
    void whatAFigureIsMadeOfLeadsToTheBikesBehindIt() {
        assertThat(besideFigure("through")).contains("other");
    }

    @Test
    void bikesThatWereMadeWhereTheyAreDrawnAreShownByThatDrawing() {
        assertThat(besideFigure("limits")).contains("one and two");
    }

    @Test
    void theDrawingOfAllItsBikesComesBeforeThatOfOne() {
        assertThat(besideFigure("all")).contains("frame and other");
    }
}
