package rakeline.engine.jshell;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import rakeline.engine.Layout;
import rakeline.engine.PageRow;
import rakeline.engine.RowSource;
import rakeline.engine.SnippetSource;

/**
 * Rows whose names no other row takes, and which JShell therefore need not know: it writes an import of each name that it
 * knows into whatever it compiles. What they hold stays in the worker. Where a row comes to take a name of theirs, they
 * are compiled once more, and not run: the names mean what the worker holds.
 */
final class Aside {
    /** How the names of classes begin that have none and that are a variable's type. */
    private static final String COUNTED = "$JShell$anonymous$";

    private final JShell shell;
    private final WorkerControl control;
    private final Places places;
    private final Set<String> rows = new HashSet<>();

    Aside(JShell shell, WorkerControl control, Places places) {
        this.shell = shell;
        this.control = control;
        this.places = places;
    }

    /**
     * Whether JShell can do without the names of a row that has run. Not in a page with imports: one below the row would
     * be in force when it is compiled once more. And not where a class is called by how many there were before.
     */
    boolean suits(PageRow row, Layout page) {
        List<Snippet> parts = places.of(row.id());
        return !parts.isEmpty()
                && page.takers(row.id()).isEmpty()
                && page.rows().stream().noneMatch(each -> each.source().hasImport())
                && parts.stream().noneMatch(part -> places.wrapped(part).contains(COUNTED));
    }

    /** The row's names have been taken from JShell. */
    void put(String id) {
        rows.add(id);
    }

    /** The row runs again, or is gone. */
    void forget(String id) {
        rows.remove(id);
    }

    /** Lets JShell know the names that a row takes. */
    void bringBack(List<Layout.Need> needs) {
        needs.stream().map(Layout.Need::rowId).filter(rows::remove).forEach(this::bringBack);
    }

    private void bringBack(String id) {
        RowSource source = places.sourceOf(id);
        List<String> names = places.remove(id).stream().map(places::classOf).toList();
        control.beginAgain();
        source.snippets().forEach(snippet -> compile(id, source, snippet));
        List<Snippet> again = places.of(id);
        if (again.size() != names.size()
                || !again.stream().allMatch(part -> shell.status(part).isActive())) {
            throw new IllegalStateException("A row that has run could not be compiled once more: " + source.text());
        }
        for (int i = 0; i < again.size(); i++) {
            control.callSame(places.compiledClassOf(again.get(i)), names.get(i));
        }
    }

    private void compile(String id, RowSource source, SnippetSource snippet) {
        shell.eval(snippet.text()).stream()
                .filter(event -> event.causeSnippet() == null)
                .map(SnippetEvent::snippet)
                .forEach(part -> places.add(id, source, part, snippet.offset()));
    }
}
