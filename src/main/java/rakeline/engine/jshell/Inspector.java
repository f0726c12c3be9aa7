package rakeline.engine.jshell;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import rakeline.engine.Inspection;
import rakeline.engine.Layout;
import rakeline.engine.PageRow;
import rakeline.engine.RowNames;
import rakeline.engine.SnippetSource;
import rakeline.worksheet.Worksheet;

/** Looks at a page without a worker: nothing can run here. */
final class Inspector implements AutoCloseable {
    private final JShell shell = Shells.open(new NoEngine());
    private final PageReader reader = new PageReader(new SourceReader(shell.sourceCodeAnalysis())::read);

    Inspection inspect(Worksheet worksheet) {
        Layout page = reader.read(worksheet);
        List<Inspection.Finding> findings =
                page.rows().stream().flatMap(row -> finding(page, row).stream()).toList();
        List<SnippetSource.Declared> controls = page.rows().stream()
                .flatMap(row -> row.source().snippets().stream())
                .flatMap(snippet -> snippet.control().stream())
                .toList();
        return new Inspection(findings, controls);
    }

    @Override
    public void close() {
        shell.close();
    }

    private Optional<Inspection.Finding> finding(Layout page, PageRow row) {
        return page.refusal(row.id())
                .or(() -> unparsed(row))
                .map(sentence -> new Inspection.Finding(
                        row.id(),
                        row.number(),
                        RowNames.defined(row.source()).orElse("row " + row.number()),
                        sentence));
    }

    private Optional<String> unparsed(PageRow row) {
        return row.source().snippets().stream()
                .filter(snippet -> !snippet.parsed())
                .flatMap(snippet -> rejection(row, snippet))
                .findFirst();
    }

    /** What does not parse is rejected before it could run. */
    private Stream<String> rejection(PageRow row, SnippetSource snippet) {
        CompileErrors errors = new CompileErrors(row.source(), Set.of());
        return shell.eval(snippet.text()).stream()
                .map(SnippetEvent::snippet)
                .filter(part -> shell.status(part) == Snippet.Status.REJECTED)
                .flatMap(part -> shell.diagnostics(part).filter(Diag::isError).limit(1))
                .map(diag -> errors.sentence(diag, snippet.text(), snippet.offset()));
    }
}
