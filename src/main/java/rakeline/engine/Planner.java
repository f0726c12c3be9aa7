package rakeline.engine;

import java.util.ArrayDeque;
import java.util.ArrayList;
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

    /**
     * What a change of the page asks for.
     *
     * @param toRun the rows to run again, in page order
     * @param fromSource those of them that no longer say what they were compiled from
     */
    public record Changes(List<String> toRun, Set<String> fromSource) {
        public Changes {
            toRun = List.copyOf(toRun);
            fromSource = Set.copyOf(fromSource);
        }
    }

    /** What to do when a page takes the place of another. */
    public static Changes changes(Layout before, Layout after, Predicate<String> changing) {
        if (!imports(before, after).equals(imports(after, before))) {
            return new Changes(ids(after), Set.copyOf(ids(after)));
        }
        List<String> toRun = downstream(after, seeds(before, after, changing), changing);
        Set<String> rewritten = new LinkedHashSet<>(toRun);
        rewritten.removeIf(id -> before.has(id) && text(before, id).equals(text(after, id)));
        return new Changes(toRun, rewritten);
    }

    private static Set<String> seeds(Layout before, Layout after, Predicate<String> changing) {
        Entangled then = Entangled.of(before, changing);
        Entangled now = Entangled.of(after, changing);
        Set<String> seeds = new LinkedHashSet<>();
        for (String id : ids(after)) {
            if (!before.has(id) || !Standing.of(before, then, id).equals(Standing.of(after, now, id))) {
                seeds.add(id);
            }
        }
        return seeds;
    }

    /** The rows to run again when some do, these among them, in page order. */
    public static List<String> downstream(Layout page, Set<String> seeds, Predicate<String> changing) {
        if (seeds.isEmpty()) {
            return List.of();
        }
        Entangled ties = Entangled.of(page, changing);
        Set<String> found = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>(seeds);
        while (!open.isEmpty()) {
            String id = open.pop();
            if (found.add(id)) {
                open.addAll(ties.with(id));
                open.addAll(page.takers(id));
            }
        }
        return inOrder(page, found);
    }

    /**
     * What must be compiled again with rows, since an import can change what any row below it means and must not be in
     * force while a row above it is compiled: all from the first of these rows on, where an import follows.
     */
    public static List<String> underImports(Layout page, Set<String> compiled) {
        List<PageRow> rest = page.rows().stream()
                .dropWhile(row -> !compiled.contains(row.id()))
                .toList();
        return rest.stream().anyMatch(row -> row.source().hasImport())
                ? rest.stream().map(PageRow::id).toList()
                : List.of();
    }

    /** The imports of a page, each with the rows above it that the other page has too. */
    private static List<List<String>> imports(Layout page, Layout other) {
        List<List<String>> found = new ArrayList<>();
        List<String> above = new ArrayList<>();
        for (PageRow row : page.rows()) {
            if (row.source().hasImport()) {
                List<String> standing = new ArrayList<>(above);
                standing.add(row.source().text());
                found.add(standing);
            }
            if (other.has(row.id())) {
                above.add(row.id());
            }
        }
        return found;
    }

    private static List<String> ids(Layout page) {
        return page.rows().stream().map(PageRow::id).toList();
    }

    private static String text(Layout page, String id) {
        return page.row(id).source().text();
    }

    private static List<String> inOrder(Layout page, Set<String> ids) {
        TreeSet<String> sorted = new TreeSet<>((a, b) -> Integer.compare(page.place(a), page.place(b)));
        sorted.addAll(ids);
        return List.copyOf(sorted);
    }
}
