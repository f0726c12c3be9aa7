package rakeline.engine.jshell;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import rakeline.engine.Entangled;
import rakeline.engine.Layout;
import rakeline.engine.Outcome;
import rakeline.engine.PageRow;
import rakeline.engine.Planner;
import rakeline.engine.Session;
import rakeline.engine.SnippetSource;
import rakeline.engine.State;

/** The page as it now is, how its rows stand, and what follows for one row from how the others do. */
final class Standing {
    private final Rows runner;
    private final Outcomes outcomes;
    private Layout page = Layout.of(List.of());

    Standing(Rows runner, Consumer<Session.Event> listener) {
        this.runner = runner;
        this.outcomes = new Outcomes(listener);
    }

    Layout page() {
        return page;
    }

    Outcomes outcomes() {
        return outcomes;
    }

    List<Outcome> all() {
        return outcomes.all();
    }

    State state(String id) {
        return outcomes.state(id);
    }

    boolean is(String id, State state) {
        return outcomes.has(id) && outcomes.state(id) == state;
    }

    /** Takes another version of the page; returns what is to run because of it. */
    Planner.Changes show(Layout next) {
        Layout before = page;
        page = next;
        outcomes.show(next);
        return Planner.changes(before, next, runner::changing);
    }

    /** Rows that did not compile, where the names that could have been meant are now others, and what follows from them. */
    List<String> guessing(Layout before) {
        return downstream(ids(row -> {
            boolean failed = state(row.id()) == State.FAILED && !runner.canRepeat(row.id());
            return failed && before.has(row.id()) && !before.namesFor(row.id()).equals(page.namesFor(row.id()));
        }));
    }

    /** Rows that declare one of these dials or pickers, and what follows from them. */
    List<String> following(Set<String> controls) {
        return downstream(ids(row -> row.source().snippets().stream()
                .flatMap(snippet -> snippet.control().stream())
                .map(SnippetSource.Declared::name)
                .anyMatch(controls::contains)));
    }

    /** Rows that use a name of ours, and what follows from them. */
    List<String> using(String name) {
        return downstream(ids(row -> row.source().uses().contains(name)));
    }

    /** The rows, and those that depend on them, in page order. */
    List<String> downstream(Set<String> ids) {
        return Planner.downstream(page, ids, runner::changing);
    }

    /** Whether running the row may change values of other rows. */
    boolean isTied(String id) {
        return Entangled.of(page, runner::changing).with(id).size() > 1;
    }

    /** Rows that were given up earlier. */
    List<String> leftOver() {
        return List.copyOf(
                ids(row -> state(row.id()) == State.OUT_OF_DATE && !row.row().waits()));
    }

    /** Says that rows no longer stand as a fresh run would have them; a row that waits goes on waiting. */
    void outdate(Collection<String> ids) {
        for (String id : ids) {
            boolean stillWaits = is(id, State.WAITING) && page.row(id).row().waits();
            if (outcomes.has(id) && !stillWaits) {
                outcomes.set(id, State.OUT_OF_DATE);
            }
        }
    }

    /** A row and those above that it needs and that are not fresh. */
    Set<String> withStaleNeeds(String id) {
        Set<String> wanted = new LinkedHashSet<>();
        collectStale(id, wanted);
        return wanted;
    }

    private void collectStale(String id, Set<String> wanted) {
        wanted.add(id);
        for (Layout.Need need : page.needs(id)) {
            if (state(need.rowId()) != State.FRESH && !wanted.contains(need.rowId())) {
                collectStale(need.rowId(), wanted);
            }
        }
    }

    /** Why the row cannot run because of how another stands: one sentence. */
    Optional<String> missing(String id) {
        return page.needs(id).stream()
                .filter(need -> state(need.rowId()) != State.FRESH)
                .findFirst()
                .map(need -> "This row uses " + need.name() + " from " + page.called(need.rowId()) + ", which "
                        + words(state(need.rowId())) + ".");
    }

    /** Rows that cannot run say by its place which row that is due to; the place may be another now. */
    void reword() {
        for (Outcome outcome : all()) {
            if (outcome.state() == State.NOT_RUN) {
                missing(outcome.id())
                        .filter(now -> !now.equals(outcome.message()))
                        .ifPresent(now -> outcomes.set(outcome.id(), State.NOT_RUN, now));
            }
        }
    }

    private static String words(State state) {
        return switch (state) {
            case FAILED -> "failed";
            case STOPPED -> "was stopped";
            case WAITING -> "is waiting";
            case NOT_RUN -> "has not run";
            default -> "is " + state.words();
        };
    }

    private Set<String> ids(Predicate<PageRow> which) {
        Set<String> ids = new LinkedHashSet<>();
        page.rows().stream().filter(which).forEach(row -> ids.add(row.id()));
        return ids;
    }

    /** Rows of another version of the page that this one has no more. */
    List<String> gone(Layout before) {
        Set<String> here = new HashSet<>(ids(row -> true));
        return before.rows().stream()
                .map(PageRow::id)
                .filter(id -> !here.contains(id))
                .toList();
    }
}
