package rakeline.engine;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Tells which rows no longer stand as a fresh run from the top would have them. It errs towards running more.
 */
public final class Planner {
    private Planner() {}

    /** All that a row's outcome follows from, other than the outcomes of the rows it needs. */
    private record Standing(
            String text, boolean waits, Optional<String> refusal, List<Layout.Need> needs, List<String> tied) {
        static Standing of(Layout page, Entangled ties, String id) {
            return new Standing(
                    page.row(id).source().text(),
                    page.row(id).row().waits(),
                    page.refusal(id),
                    page.needs(id),
                    inOrder(page, ties.with(id)));
        }
    }

    /** The rows to run again when a page takes the place of another, in page order. */
    public static List<String> changed(Layout before, Layout after, Predicate<String> changing) {
        Entangled then = Entangled.of(before, changing);
        Entangled now = Entangled.of(after, changing);
        Set<String> seeds = new LinkedHashSet<>();
        for (PageRow row : after.rows()) {
            if (!before.has(row.id())
                    || !Standing.of(before, then, row.id()).equals(Standing.of(after, now, row.id()))) {
                seeds.add(row.id());
            }
        }
        seeds.addAll(afterImports(before, after, seeds));
        return downstream(after, seeds, changing);
    }

    /** The rows to run again when some do, these among them, in page order. */
    public static List<String> downstream(Layout page, Set<String> seeds, Predicate<String> changing) {
        Entangled ties = Entangled.of(page, changing);
        Set<String> found = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>(seeds);
        while (!open.isEmpty()) {
            String id = open.pop();
            if (found.add(id)) {
                open.addAll(ties.with(id));
                page.rows().stream().filter(row -> needs(page, row.id(), id)).forEach(row -> open.add(row.id()));
            }
        }
        return inOrder(page, found);
    }

    private static boolean needs(Layout page, String id, String giver) {
        return page.needs(id).stream().anyMatch(need -> need.rowId().equals(giver));
    }

    /** An import can change what any row below it means, and must not be in force in a row above it. */
    private static Set<String> afterImports(Layout before, Layout after, Set<String> seeds) {
        int first = after.rows().size();
        for (int i = after.rows().size() - 1; i >= 0; i--) {
            PageRow row = after.rows().get(i);
            boolean above = after.rows().subList(0, i + 1).stream().anyMatch(each -> seeds.contains(each.id()));
            if (row.source().hasImport() && above) {
                first = i;
            }
        }
        if (before.rows().stream().anyMatch(row -> row.source().hasImport() && !sameAfter(row, after))) {
            first = 0;
        }
        Set<String> found = new LinkedHashSet<>();
        after.rows().subList(first, after.rows().size()).forEach(row -> found.add(row.id()));
        return found;
    }

    private static boolean sameAfter(PageRow row, Layout after) {
        return after.has(row.id())
                && after.row(row.id()).source().text().equals(row.source().text());
    }

    private static List<String> inOrder(Layout page, Set<String> ids) {
        TreeSet<String> sorted = new TreeSet<>((a, b) -> Integer.compare(page.place(a), page.place(b)));
        sorted.addAll(ids);
        return List.copyOf(sorted);
    }
}
