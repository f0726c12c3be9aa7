package rakeline.engine.jshell;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import rakeline.engine.Layout;
import rakeline.engine.Outcome;
import rakeline.engine.PageRow;
import rakeline.engine.Result;
import rakeline.engine.RowNames;
import rakeline.engine.Session;
import rakeline.engine.State;

/** How the rows stand; says every change. */
final class Outcomes {
    private final Consumer<Session.Event> listener;
    private final Map<String, Outcome> byId = new HashMap<>();
    private Map<String, String> names = Map.of();
    private Layout page = Layout.of(List.of());

    Outcomes(Consumer<Session.Event> listener) {
        this.listener = listener;
    }

    /** Another version of the page: rows that are gone are forgotten, the rest stand as they stood. */
    void show(Layout newPage) {
        page = newPage;
        byId.keySet().retainAll(page.rows().stream().map(PageRow::id).toList());
        rename(namesNow());
    }

    State state(String id) {
        Outcome outcome = byId.get(id);
        return outcome == null ? State.OUT_OF_DATE : outcome.state();
    }

    boolean has(String id) {
        return byId.containsKey(id);
    }

    /** All rows in page order. */
    List<Outcome> all() {
        return page.rows().stream()
                .map(row -> byId.get(row.id()))
                .filter(outcome -> outcome != null)
                .toList();
    }

    /** The row's state alone changes; what it shows stays. */
    void set(String id, State state) {
        Outcome before = byId.get(id);
        if (before == null) {
            put(Outcome.bare(id, state, ""));
        } else if (before.state() != state) {
            put(before.in(state).saying(""));
        }
    }

    /** The row does not run. */
    void set(String id, State state, String message) {
        put(Outcome.bare(id, state, message));
    }

    void set(String id, Run run) {
        put(outcome(id, run));
    }

    /** How the row stands after it was run again; said only where that is news. Whether it is. */
    boolean bring(String id, Run run) {
        Outcome brought = outcome(id, run);
        boolean isNews = !placed(brought, byId.get(id).name()).equals(byId.get(id));
        if (isNews) {
            put(brought);
        }
        return isNews;
    }

    private static Outcome outcome(String id, Run run) {
        return new Outcome(
                id,
                "",
                run.state(),
                run.message(),
                run.printed(),
                run.result(),
                run.controls(),
                List.of(),
                List.of(),
                run.numbers());
    }

    private void put(Outcome outcome) {
        PageRow row = page.row(outcome.id());
        String before = RowNames.plain(row, result(row.id()));
        byId.put(row.id(), outcome);
        boolean isCalledAlike = before.equals(RowNames.plain(row, outcome.result()));
        Map<String, String> now = isCalledAlike ? names : namesNow();
        byId.put(outcome.id(), placed(outcome, now.get(outcome.id())));
        listener.accept(new Session.Event.Row(byId.get(outcome.id())));
        if (!now.equals(names)) {
            rename(now);
        }
    }

    /** A row that is called by what it shows may have another name, or follow another dial, once the page changes. */
    private void rename(Map<String, String> now) {
        names = now;
        names.forEach((id, name) -> {
            Outcome outcome = byId.get(id);
            if (outcome != null && !placed(outcome, name).equals(outcome)) {
                byId.put(id, placed(outcome, name));
                listener.accept(new Session.Event.Row(byId.get(id)));
            }
        });
    }

    private Map<String, String> namesNow() {
        return RowNames.of(page.rows(), this::result);
    }

    private Optional<Result> result(String id) {
        return Optional.ofNullable(byId.get(id)).flatMap(Outcome::result);
    }

    private Outcome placed(Outcome outcome, String name) {
        return outcome.placed(name, page.controlsBehind(outcome.id()), page.needs(outcome.id()));
    }
}
