package rakeline.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rakeline.worksheet.Row;

/** Which row runs next, told from sources written here by hand: {@code name} uses others, all of them compiled. */
class RunOrderTest {
    private static final String DIAL = "dial";

    private static PageRow row(String name, String... uses) {
        String text = name + " " + List.of(uses);
        SnippetSource snippet = new SnippetSource(
                0,
                text,
                List.of(Definition.variable(name)),
                Set.of(uses),
                Set.of(),
                Optional.empty(),
                Optional.empty(),
                true);
        return new PageRow(
                1,
                new Row.Snippet(name, text, false, false, OptionalInt.empty()),
                new RowSource(text, List.of(snippet)));
    }

    /** Runs all rows but the dial's, and says in which order. */
    private static String order(Layout page, String seen, String... changing) {
        return order(page, seen, Set.of(), changing);
    }

    private static String order(Layout page, String seen, Set<String> toCompile, String... changing) {
        RunOrder order = new RunOrder(
                page,
                () -> Entangled.of(page, List.of(changing)::contains),
                id -> !toCompile.contains(id),
                name -> name.equals("sweep()"));
        Set<String> pending = new HashSet<>();
        page.rows().stream().map(PageRow::id).filter(id -> !id.equals(DIAL)).forEach(pending::add);
        StringBuilder ran = new StringBuilder();
        while (!pending.isEmpty()) {
            PageRow next = order.next(pending, Set.of(seen));
            pending.remove(next.id());
            ran.append(next.id()).append(' ');
        }
        return ran.toString().strip();
    }

    @Test
    void aRowInSightRunsBeforeThoseAboveItThatItDoesNotNeed() {
        Layout page = Layout.of(List.of(
                row(DIAL),
                row("it", DIAL),
                row("slow", "it", "sweep()"),
                row("seen", "it", "sweep()"),
                row("last", "it")));
        assertThat(order(page, "seen")).isEqualTo("it seen slow last");
    }

    @Test
    void whatItNeedsRunsFirst() {
        Layout page = Layout.of(
                List.of(row(DIAL), row("slow", DIAL), row("it", DIAL), row("built", "it"), row("seen", "built")));
        assertThat(order(page, "seen")).isEqualTo("it built seen slow");
    }

    @Test
    void withoutARowInSightTheyRunFromTheTop() {
        Layout page = Layout.of(List.of(row(DIAL), row("slow", DIAL), row("it", DIAL)));
        assertThat(order(page, DIAL)).isEqualTo("slow it");
    }

    @Test
    void aRowThatTouchesMoreThanThePageAndTheLibraryKeepsItsPlace() {
        Layout page = Layout.of(List.of(row(DIAL), row("slow", DIAL), row("seen", DIAL, "System")));
        assertThat(order(page, "seen")).isEqualTo("slow seen");
    }

    @Test
    void noRowGoesAheadOfOneThatTouchesMoreThanThePageAndTheLibrary() {
        Layout page = Layout.of(List.of(row(DIAL), row("slow", DIAL, "System"), row("seen", DIAL)));
        assertThat(order(page, "seen")).isEqualTo("slow seen");
    }

    @Test
    void rowsThatMayChangeEachOthersValuesKeepTheirOrder() {
        Layout page = Layout.of(List.of(row("list"), row("slow", "list"), row("seen", "list")));
        assertThat(order(page, "seen", "list")).isEqualTo("list slow seen");
    }

    @Test
    void nothingGoesAheadOfARowThatIsToBeCompiled() {
        Layout page = Layout.of(List.of(row(DIAL), row("slow", DIAL), row("seen", DIAL)));
        assertThat(order(page, "seen", Set.of("slow"))).isEqualTo("slow seen");
    }
}
