package rakeline.engine.jshell;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rakeline.engine.Planner;

/** What is to run: rows go to the agenda, and those that must be compiled for it lose their names first. */
final class Plan {
    private final Rows runner;
    private final Standing standing;
    private final Agenda agenda;

    Plan(Rows runner, Standing standing, Agenda agenda) {
        this.runner = runner;
        this.standing = standing;
        this.agenda = agenda;
    }

    boolean holds(String id) {
        return agenda.has(id);
    }

    /** Rows are to run again, in page order. */
    void rerun(List<String> ids) {
        rerun(ids, Set.of());
    }

    /**
     * Rows are to run again, and with them whatever cannot stand when they do.
     *
     * @param ids in page order
     * @param rewritten those that are compiled again even if they could be repeated
     */
    void rerun(List<String> ids, Set<String> rewritten) {
        Set<String> stale = stale(ids, rewritten);
        List<String> under = Planner.underImports(standing.page(), stale);
        if (stale.containsAll(under)) {
            runner.forget(List.copyOf(stale));
            agenda.add(ids);
            standing.outdate(ids);
        } else {
            rerun(standing.downstream(union(ids, under)), union(rewritten, under));
        }
    }

    private Set<String> stale(List<String> ids, Set<String> rewritten) {
        Set<String> stale = new LinkedHashSet<>();
        for (String id : ids) {
            boolean needsStale = standing.page().needs(id).stream().anyMatch(need -> stale.contains(need.rowId()));
            if (rewritten.contains(id) || needsStale || !runner.canRepeat(id)) {
                stale.add(id);
            }
        }
        return stale;
    }

    private static Set<String> union(Collection<String> some, Collection<String> others) {
        Set<String> union = new LinkedHashSet<>(some);
        union.addAll(others);
        return union;
    }
}
