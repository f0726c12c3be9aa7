package rakeline.engine;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Which of the rows that are to run comes next: the topmost, unless one in sight can run first and nothing comes out
 * otherwise for it. A row goes ahead of others only where it takes nothing from them, neither can change a value of the
 * other, and neither is compiled or touches anything but names of the page and of the library.
 */
public final class RunOrder {
    private final Layout page;
    private final Supplier<Entangled> ties;
    private final Predicate<String> repeats;
    private final Predicate<String> harmless;

    /**
     * @param ties which rows may change each other's values
     * @param repeats whether a row, by its id, runs again as it was compiled
     * @param harmless whether a name from outside the page changes nothing that another row could see
     */
    public RunOrder(Layout page, Supplier<Entangled> ties, Predicate<String> repeats, Predicate<String> harmless) {
        this.page = page;
        this.ties = ties;
        this.repeats = repeats;
        this.harmless = harmless;
    }

    /**
     * The row to run next.
     *
     * @param pending the rows that are to run, at least one
     * @param sight the rows that a person sees
     */
    public PageRow next(Set<String> pending, Set<String> sight) {
        List<PageRow> waiting =
                page.rows().stream().filter(row -> pending.contains(row.id())).toList();
        PageRow top = waiting.get(0);
        Set<String> wanted = page.behind(sight);
        Optional<PageRow> first =
                waiting.stream().filter(row -> wanted.contains(row.id())).findFirst();
        return first.filter(row -> row.equals(top) || mayGoAhead(row, waiting)).orElse(top);
    }

    /** The first of the wanted rows needs no other that is to run: that one would be wanted, too, and stand above it. */
    private boolean mayGoAhead(PageRow row, List<PageRow> waiting) {
        List<PageRow> passed = waiting.subList(0, waiting.indexOf(row));
        return isPlain(row) && passed.stream().allMatch(this::isPlain) && isFreeOf(passed, row);
    }

    private boolean isFreeOf(List<PageRow> passed, PageRow row) {
        Set<String> tied = ties.get().with(row.id());
        return passed.stream().noneMatch(other -> tied.contains(other.id()));
    }

    private boolean isPlain(PageRow row) {
        return repeats.test(row.id())
                && !row.source().hasImport()
                && !row.source().keepsState()
                && usesPlainNames(row)
                && page.needs(row.id()).stream()
                        .map(need -> page.row(need.rowId()))
                        .filter(RunOrder::runsElsewhere)
                        .allMatch(this::usesPlainNames);
    }

    /** Whether something of the row is a body that runs where it is used. */
    private static boolean runsElsewhere(PageRow row) {
        return row.source().snippets().stream().anyMatch(SnippetSource::isDeferred);
    }

    private boolean usesPlainNames(PageRow row) {
        return row.source().uses().stream().allMatch(name -> page.names().contains(name) || harmless.test(name));
    }
}
