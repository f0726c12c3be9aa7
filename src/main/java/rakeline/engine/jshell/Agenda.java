package rakeline.engine.jshell;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import rakeline.engine.Layout;
import rakeline.engine.PageRow;
import rakeline.engine.RunOrder;
import rakeline.engine.Session;

/** The rows that are still to run. */
final class Agenda {
    private final Set<String> pending = new HashSet<>();
    private final Set<String> forced = new HashSet<>();
    private int done;

    boolean isEmpty() {
        return pending.isEmpty();
    }

    boolean has(String id) {
        return pending.contains(id);
    }

    void add(Collection<String> ids) {
        pending.addAll(ids);
    }

    /** Rows that run even where they are set to wait. */
    void force(Set<String> ids) {
        forced.addAll(ids);
    }

    /** Another version of the page: rows that are gone do not run. */
    void keep(Layout page) {
        pending.removeIf(id -> !page.has(id));
    }

    void clear() {
        pending.clear();
        forced.clear();
    }

    /** The next, of which those in sight come first where the order lets them. */
    PageRow next(RunOrder order, Set<String> sight) {
        return order.next(pending, sight);
    }

    /** A row is being dealt with. */
    void take(PageRow row) {
        pending.remove(row.id());
    }

    /** Whether a row that was taken runs even where it is set to wait. */
    boolean takeForced(String id) {
        return forced.remove(id);
    }

    /** One more has been dealt with. */
    Session.Event.Progress oneDone() {
        done++;
        Session.Event.Progress progress = new Session.Event.Progress(done, done + pending.size());
        done = pending.isEmpty() ? 0 : done;
        return progress;
    }
}
