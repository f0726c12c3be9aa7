package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.VarSnippet;
import rakeline.engine.PageRow;
import rakeline.engine.SnippetSource;

/** One run of a row from source, snippet by snippet, up to its first failure. */
final class RowRun {
    private final PageRow row;
    private final JShell shell;
    private final WorkerControl control;
    private final Places places;
    private final CompileErrors errors;
    private final Tally tally;
    private final Printed printed;
    private final List<Worker.Call> calls = new ArrayList<>();
    private final List<Recording.Variable> variables = new ArrayList<>();
    private final Map<String, Boolean> changing = new HashMap<>();
    private final List<DeclarationSnippet> declared = new ArrayList<>();
    private boolean showsLastCall;
    private Optional<String> rejection = Optional.empty();

    RowRun(
            PageRow row,
            JShell shell,
            WorkerControl control,
            Places places,
            CompileErrors errors,
            Tally tally,
            Printed printed) {
        this.row = row;
        this.shell = shell;
        this.control = control;
        this.places = places;
        this.errors = errors;
        this.tally = tally;
        this.printed = printed;
    }

    Run go() {
        control.beginRow();
        List<SnippetSource> snippets = row.source().snippets();
        boolean goesOn = true;
        for (int i = 0; goesOn && i < snippets.size(); i++) {
            goesOn = evaluate(snippets.get(i), i == snippets.size() - 1);
        }
        if (goesOn && allComplete()) {
            recording().shown().ifPresent(variable -> tally.take(control.show(variable, printed), true));
        }
        return tally.run();
    }

    /** The row as compiled. */
    Recording recording() {
        return new Recording(calls, variables, showsLastCall, Map.of(), !tally.hasEnded(), rejection);
    }

    /** For each variable, whether its value can change later. */
    Map<String, Boolean> changing() {
        return changing;
    }

    private boolean evaluate(SnippetSource snippet, boolean isLast) {
        String declaredControl =
                snippet.control().map(SnippetSource.Declared::name).orElse("");
        control.begin(printed, declaredControl, isLast);
        List<SnippetEvent> events = shell.eval(snippet.text());
        calls.addAll(control.calls());
        for (SnippetEvent event : events) {
            if (event.causeSnippet() == null && !keep(event.snippet(), snippet)) {
                return false;
            }
        }
        showsLastCall = events.stream().anyMatch(event -> hasValue(event.snippet()));
        return tally.take(control.answer(), isLast && showsLastCall);
    }

    private static boolean hasValue(Snippet part) {
        return part.kind() == Snippet.Kind.VAR || part.kind() == Snippet.Kind.EXPRESSION;
    }

    private boolean keep(Snippet part, SnippetSource source) {
        places.add(row.id(), row.source(), part, source.offset());
        if (shell.status(part) == Snippet.Status.REJECTED) {
            return reject(sentence(part, source));
        }
        if (part instanceof DeclarationSnippet declaration) {
            declared.add(declaration);
        }
        if (part instanceof VarSnippet variable) {
            boolean alone = source.defines().size() == 1;
            variables.add(new Recording.Variable(variable.name(), places.classOf(part), alone));
            boolean canChange = !(control.answer().orElse(null) instanceof Answer.Done done) || done.changing();
            changing.put(variable.name(), canChange || !alone);
            if (alone) {
                tally.note(variable.name(), control.answer());
            }
        }
        return true;
    }

    private boolean reject(String sentence) {
        rejection = Optional.of(sentence);
        return tally.fail(sentence);
    }

    private String sentence(Snippet part, SnippetSource source) {
        Optional<Diag> error = shell.diagnostics(part).filter(Diag::isError).findFirst();
        return error.map(diag -> errors.sentence(diag, source.text(), source.offset()))
                .orElse("Java does not accept this row.");
    }

    /** Whether a name in the body of one of the row's methods or classes has not been found. */
    boolean isIncomplete() {
        return incomplete().isPresent();
    }

    private Optional<DeclarationSnippet> incomplete() {
        return declared.stream()
                .filter(declaration -> shell.status(declaration) != Snippet.Status.VALID)
                .findFirst();
    }

    private boolean allComplete() {
        return incomplete().map(each -> reject(unknownName(each))).orElse(true);
    }

    private String unknownName(DeclarationSnippet incomplete) {
        Optional<Diag> error =
                shell.diagnostics(incomplete).filter(Diag::isError).findFirst();
        return error.map(diag -> errors.sentence(diag, incomplete.source(), offsetOf(incomplete)))
                .orElseGet(() ->
                        errors.unknown(shell.unresolvedDependencies(incomplete).toList(), offsetOf(incomplete)));
    }

    private int offsetOf(DeclarationSnippet declaration) {
        return Math.max(0, row.source().text().indexOf(declaration.source().strip()));
    }
}
