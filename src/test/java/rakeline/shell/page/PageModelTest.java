package rakeline.shell.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rakeline.engine.Control;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

class PageModelTest {
    private static final Control.Dial HEAD =
            new Control.Dial("head", "Head angle", "", "°", 69, 74, 0.1, 71.3, 71.3, 71.3, 1);
    private static final Worksheet PAGE = Worksheet.empty("Page")
            .withRows(List.of(Row.Snippet.of("r1", "a"), Row.Snippet.of("r2", "b"), Row.Snippet.of("r3", "c")));
    private static final PageModel RUN = PageModel.of(PAGE, new Origin.New(), true)
            .after(outcome("r1", State.FRESH))
            .after(outcome("r2", State.FRESH))
            .after(outcome("r3", State.FRESH));

    private static Outcome outcome(String id, State state) {
        Optional<Result> result = state == State.FRESH ? Optional.of(new Result.Text("seven")) : Optional.empty();
        return new Outcome(
                id, "name", state, "", "", result, state == State.FRESH ? List.of(HEAD) : List.of(), List.of());
    }

    private static PageModel typed(String id) {
        return RUN.with(RUN.history().edit("typing", PAGE.withText(id, "changed")));
    }

    @Test
    void aRowNotTriedYetIsOutOfDate() {
        assertThat(PageModel.of(PAGE, new Origin.New(), true).standing("r1").state())
                .isEqualTo(State.OUT_OF_DATE);
    }

    @Test
    void aRowTypedInIsOutOfDateAndSoIsWhatStandsBelow() {
        PageModel typed = typed("r2");
        assertThat(List.of("r1", "r2", "r3").stream()
                        .map(id -> typed.standing(id).state()))
                .containsExactly(State.FRESH, State.OUT_OF_DATE, State.OUT_OF_DATE);
    }

    @Test
    void oncePassedOnATypedRowCountsAsTheSessionSays() {
        PageModel typed = typed("r2");
        assertThat(typed.handing(typed.page()).standing("r2").state()).isEqualTo(State.FRESH);
    }

    @Test
    void theLastResultStaysInSightWhileItsRowRunsAgain() {
        PageModel running = RUN.after(outcome("r1", State.RUNNING));
        assertThat(running.standing("r1").result()).contains(new Result.Text("seven"));
        assertThat(running.standing("r1").state()).isEqualTo(State.RUNNING);
    }

    @Test
    void aFailedRowKeepsNoResult() {
        assertThat(RUN.after(outcome("r1", State.FAILED)).standing("r1").result())
                .isEmpty();
    }

    @Test
    void aDialStandsAtThePagesValue() {
        PageModel moved = RUN.with(RUN.history().edit(PAGE.withDial("head", 72)));
        assertThat(moved.controls().get(0))
                .isInstanceOfSatisfying(
                        Control.Dial.class, dial -> assertThat(dial.value()).isEqualTo(72));
    }

    @Test
    void aStoredValueOutOfRangeDoesNotMoveTheDial() {
        PageModel stored = RUN.with(RUN.history().edit(PAGE.withDial("head", 80)));
        assertThat(stored.controls().get(0)).isEqualTo(HEAD);
    }

    @Test
    void aPageIsUnsavedOnceItDiffersFromWhatWasSaved() {
        PageModel typed = typed("r2");
        assertThat(typed.history().isSaved()).isFalse();
        assertThat(typed.savedTo(new Origin.New(), typed.page()).history().isSaved())
                .isTrue();
    }

    @Test
    void anAnswerIsHiddenUntilItIsOpened() {
        Row.Snippet check = Row.Snippet.of("r1", "a").folded(true);
        Row.Note answer = new Row.Note("n1", "Worked answer: seven.").folded(true);
        PageModel closed = PageModel.of(PAGE.withRows(List.of(check, answer)), new Origin.New(), true);
        assertThat(List.of(closed.isHidden("r1"), closed.isHidden("n1"))).containsOnly(true);
        PageModel open = closed.turning("n1");
        assertThat(List.of(open.isHidden("r1"), open.isHidden("n1"))).containsOnly(false);
        assertThat(open.turning("r1").isHidden("n1")).isTrue();
    }

    @Test
    void aRowThatIsNotFoldedIsNeverHidden() {
        PageModel now = PageModel.of(PAGE.withRows(List.of(Row.Snippet.of("r1", "a"))), new Origin.New(), true);
        assertThat(now.isHidden("r1")).isFalse();
        assertThat(now.turning("r1").isHidden("r1")).isFalse();
    }

    @Test
    void allAnswersAreOpenedAndThenClosed() {
        List<Row> rows = List.of(
                new Row.Note("n1", "one").folded(true),
                new Row.Note("n2", "two"),
                new Row.Note("n3", "three").folded(true));
        PageModel closed = PageModel.of(PAGE.withRows(rows), new Origin.New(), true);
        PageModel open = closed.turning("n1").turningAll();
        assertThat(List.of(open.isHidden("n1"), open.isHidden("n3"))).containsOnly(false);
        assertThat(open.turningAll().isHidden("n1")).isTrue();
    }

    private static final Figure CHART = new Table("Seven", List.of(), "", List.of());

    private static Outcome drawn(String id) {
        Optional<Result> result = Optional.of(new Result.Shown(CHART));
        return new Outcome(id, "name", State.FRESH, "", "", result, List.of(HEAD), List.of());
    }

    @Test
    void theLastGoodFigureOfARowThatFailsIsKeptApartFromWhatTheRowCameTo() {
        PageModel failed = RUN.after(drawn("r1")).after(outcome("r1", State.FAILED));
        assertThat(failed.figureBefore("r1")).contains(CHART);
        assertThat(failed.isOld("r1")).isTrue();
        assertThat(failed.outcomes().get(0).result()).isEmpty();
    }

    @Test
    void aFreshResultTakesTheFigureOfBeforeAway() {
        PageModel again =
                RUN.after(drawn("r1")).after(outcome("r1", State.FAILED)).after(outcome("r1", State.FRESH));
        assertThat(again.figureBefore("r1")).isEmpty();
        assertThat(again.isOld("r1")).isFalse();
    }

    @Test
    void whatIsTypedMakesItsFigureOldUntilItRuns() {
        PageModel typed = typed("r2");
        assertThat(typed.isOld("r2")).isTrue();
        assertThat(typed.isOld("r1")).isFalse();
        assertThat(typed.handing(typed.page())
                        .after(outcome("r2", State.RUNNING))
                        .isOld("r2"))
                .isFalse();
    }

    @Test
    void aFigureThatIsAboutToBeDrawnAnewIsNotOldYet() {
        PageModel moving = RUN.resting(false).after(outcome("r2", State.OUT_OF_DATE));
        assertThat(moving.isOld("r2")).isFalse();
        assertThat(moving.resting(true).isOld("r2")).isTrue();
    }

    @Test
    void aDialStaysInSightWhileItsRowFails() {
        assertThat(RUN.after(outcome("r1", State.FAILED)).controls()).contains(HEAD);
    }

    @Test
    void aPageIsNotSettledUntilTheSessionHasDealtWithWhatItWasHanded() {
        PageModel handed = RUN.resting(true).handing(typed("r2").page());
        assertThat(RUN.resting(true).isSettled()).isTrue();
        assertThat(handed.isSettled()).isFalse();
    }

    @Test
    void aRowThatWasGivenUpLeavesThePageSettled() {
        assertThat(RUN.after(outcome("r2", State.OUT_OF_DATE)).resting(true).isSettled())
                .isTrue();
    }

    @Test
    void whereADialOfABundledPageStandsIsNoWork() {
        PageModel moved = PageModel.of(PAGE, new Origin.Bundled("worksheets/a.rakeline"), true);
        PageModel dialled =
                moved.with(moved.history().edit(PAGE.withDial("head", 72).withPick("mine", "a.bike.json")));
        assertThat(dialled.isSaved()).isTrue();
        assertThat(dialled.with(dialled.history().edit(dialled.page().withText("r1", "x")))
                        .isSaved())
                .isFalse();
    }

    @Test
    void whereADialOfAPageOfOnesOwnStandsIsWork() {
        assertThat(RUN.with(RUN.history().edit(PAGE.withDial("head", 72))).isSaved())
                .isFalse();
    }

    @Test
    void aPageIsKeptWithWhatItsPickersStandAt() {
        Outcome picked = new Outcome(
                "r1",
                "mine",
                State.FRESH,
                "",
                "",
                Optional.empty(),
                List.of(
                        new Control.Picker("mine", "Bike", List.of("a.bike.json"), List.of("A"), "a.bike.json"),
                        new Control.Picker("rider", "Rider", List.of("b.rider.json"), List.of("B"), "b.rider.json")),
                List.of());
        PageModel page = RUN.after(picked);
        assertThat(page.choosing(PAGE).picks()).isEqualTo(Map.of("mine", "a.bike.json", "rider", "b.rider.json"));
        assertThat(page.choosingBikes(PAGE).picks()).isEqualTo(Map.of("mine", "a.bike.json"));
        assertThat(page.choosing(PAGE.withPick("mine", "c.bike.json")).picks()).containsEntry("mine", "c.bike.json");
    }
}
