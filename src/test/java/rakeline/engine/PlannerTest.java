package rakeline.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rakeline.worksheet.Row;

/** Which rows run again, told from sources written here by hand: {@code name=uses}, {@code name!=uses} assigns too. */
class PlannerTest {
    private static PageRow row(String id, Optional<Definition> defines, Set<String> uses, Set<String> assigns) {
        String text = defines + " " + uses.stream().sorted().toList() + " " + assigns;
        SnippetSource snippet = new SnippetSource(
                0, text, defines.stream().toList(), uses, assigns, Optional.empty(), Optional.empty(), true);
        return new PageRow(
                1, new Row.Snippet(id, text, false, false, OptionalInt.empty()), new RowSource(text, List.of(snippet)));
    }

    private static PageRow variable(String name, String... uses) {
        return row(name, Optional.of(Definition.variable(name)), Set.of(uses), Set.of());
    }

    private static PageRow method(String name, String... uses) {
        return row(name, Optional.of(Definition.method(name, "")), Set.of(uses), Set.of());
    }

    private static PageRow use(String id, String... uses) {
        return row(id, Optional.empty(), Set.of(uses), Set.of());
    }

    private static PageRow assign(String id, String target, String... uses) {
        return row(id, Optional.empty(), Set.of(uses), Set.of(target));
    }

    private static PageRow imports(String name) {
        return row("import-" + name, Optional.of(Definition.imported(name)), Set.of(), Set.of());
    }

    private static Layout page(PageRow... rows) {
        return Layout.of(List.of(rows));
    }

    private static List<String> changed(Layout before, Layout after, String... changing) {
        return Planner.changes(before, after, List.of(changing)::contains).toRun();
    }

    private static List<String> downstream(Layout page, String id, String... changing) {
        return Planner.downstream(page, Set.of(id), List.of(changing)::contains);
    }

    @Test
    void nothingRunsWhenNothingChanged() {
        assertThat(changed(page(variable("a"), use("u", "a")), page(variable("a"), use("u", "a"))))
                .isEmpty();
    }

    @Test
    void anEditRunsTheRowAndWhatUsesItThroughOthers() {
        Layout page = page(variable("a"), variable("b", "a"), variable("c"), use("u", "b"));
        assertThat(downstream(page, "a")).containsExactly("a", "b", "u");
    }

    @Test
    void aRowThatCallsAMethodUsesWhatItsBodyUses() {
        Layout page = page(variable("a"), method("f", "a"), use("u", "f()"));
        assertThat(downstream(page, "a")).containsExactly("a", "f", "u");
    }

    @Test
    void aDeletedRowRunsItsUsersAgain() {
        assertThat(changed(page(variable("a"), use("u", "a")), page(use("u", "a"))))
                .containsExactly("u");
    }

    @Test
    void swappingRowsThatDoNotKnowEachOtherRunsNothing() {
        assertThat(changed(page(variable("a"), variable("b")), page(variable("b"), variable("a"))))
                .isEmpty();
    }

    @Test
    void movingARowAboveWhatItUsesRunsIt() {
        assertThat(changed(page(variable("a"), use("u", "a")), page(use("u", "a"), variable("a"))))
                .contains("u");
    }

    @Test
    void aChangingValueStartsAgainAtTheRowThatDefinesIt() {
        Layout page = page(variable("x"), variable("list"), use("add", "list", "x"), use("size", "list"));
        assertThat(downstream(page, "x", "list")).containsExactly("x", "list", "add", "size");
        assertThat(downstream(page, "x")).containsExactly("x", "add");
    }

    @Test
    void anAssignedNumberIsAChangingValue() {
        Layout page = page(variable("x"), variable("sum"), assign("add", "sum", "sum", "x"), use("show", "sum"));
        assertThat(downstream(page, "x")).containsExactly("x", "sum", "add", "show");
    }

    @Test
    void changingValuesThatMeetInOneRowAreTied() {
        Layout page = page(variable("list"), variable("alias", "list"), use("clear", "alias"), use("size", "list"));
        assertThat(downstream(page, "clear", "list", "alias")).containsExactly("list", "alias", "clear", "size");
    }

    @Test
    void takingAwayARowThatChangedAValueRunsTheOthersThatReachIt() {
        Layout before = page(variable("list"), use("add", "list"), use("size", "list"));
        Layout after = page(variable("list"), use("size", "list"));
        assertThat(changed(before, after, "list")).containsExactly("list", "size");
    }

    @Test
    void aSecondDeclarationRunsBothRows() {
        Layout before = page(variable("a"));
        Layout after = page(variable("a"), row("other", Optional.of(Definition.variable("a")), Set.of("z"), Set.of()));
        assertThat(changed(before, after)).containsExactly("a", "other");
    }

    @Test
    void aChangedImportCompilesAllAgain() {
        Planner.Changes changes = Planner.changes(
                page(imports("Duration"), variable("a")), page(imports("Instant"), variable("a")), any -> false);
        assertThat(changes.fromSource()).containsExactlyInAnyOrder("import-Instant", "a");
    }

    @Test
    void anEditBelowAnImportCompilesOnlyWhatChanged() {
        Planner.Changes changes = Planner.changes(
                page(imports("Duration"), variable("a"), variable("b")),
                page(imports("Duration"), variable("a", "z"), variable("b")),
                any -> false);
        assertThat(changes.fromSource()).containsExactly("a");
    }

    @Test
    void whatIsCompiledAboveAnImportTakesAllBelowItAlong() {
        Layout page = page(variable("a"), variable("b"), imports("Duration"), variable("c"));
        assertThat(Planner.underImports(page, Set.of("b"))).containsExactly("b", "import-Duration", "c");
    }

    @Test
    void whatIsCompiledBelowEveryImportTakesNothingAlong() {
        Layout page = page(imports("Duration"), variable("a"), variable("b"));
        assertThat(Planner.underImports(page, Set.of("a"))).isEmpty();
    }

    @Test
    void aNameDeclaredOnlyBelowIsRefused() {
        assertThat(page(use("u", "a"), variable("a")).refusal("u"))
                .hasValueSatisfying(sentence -> assertThat(sentence).startsWith("a is declared only below"));
    }

    @Test
    void rowsAreCalledByWhatTheyDefineElseByWhatTheyShowNumbered() {
        List<PageRow> rows = new ArrayList<>(List.of(variable("a"), use("u"), use("v")));
        assertThat(RowNames.of(rows, id -> Optional.of(new Result.Text(""))))
                .containsEntry("a", "a")
                .containsEntry("u", "text")
                .containsEntry("v", "text 2");
    }
}
