package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import rakeline.engine.Suggestions;
import rakeline.prelude.Prelude;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** Words from a JShell that has compiled the rows above and run none of them; one call at a time. */
final class WordFinder implements Suggestions {
    /** Of how many words the signatures are looked up. */
    private static final int MOST_SIGNED = 60;

    private final JShell shell = Shells.open(new Unrun());
    private final SourceCodeAnalysis analysis = shell.sourceCodeAnalysis();
    private final List<Declared> declared = new ArrayList<>();
    private boolean imported;

    /** A snippet that the shell knows. */
    private record Declared(String text, List<SnippetEvent> events) {}

    /** The snippet that is being typed, up to the caret, and those before it. */
    private record Typed(List<String> before, String last, int offset) {}

    @Override
    public synchronized Offer at(Worksheet page, String row, int caret) {
        Typed typed = typed(page, row, caret);
        declare(typed.before());
        int[] anchor = {0};
        List<String> words = analysis
                .completionSuggestions(typed.last(), typed.last().length(), anchor)
                .stream()
                .map(SourceCodeAnalysis.Suggestion::continuation)
                .distinct()
                .toList();
        String head = typed.last().substring(0, anchor[0]);
        boolean few = words.size() <= MOST_SIGNED;
        return new Offer(
                typed.offset() + anchor[0],
                words.stream()
                        .map(word -> new Suggestion(word, few ? signatures(head + word) : List.of()))
                        .toList());
    }

    /** A method without arguments is offered closed; Java tells of it where it is still open. */
    private List<String> signatures(String word) {
        String text = word.endsWith("()") ? word.substring(0, word.length() - 1) : word;
        return analysis.documentation(text, text.length(), false).stream()
                .map(Documentation::signature)
                .distinct()
                .toList();
    }

    @Override
    public synchronized List<String> explain(Worksheet page, String row, int caret) {
        Typed typed = typed(page, row, caret);
        declare(typed.before());
        return analysis.documentation(typed.last(), typed.last().length(), true).stream()
                .flatMap(found -> Stream.of(found.signature(), found.javadoc() == null ? "" : found.javadoc()))
                .filter(words -> !words.isBlank())
                .toList();
    }

    private Typed typed(Worksheet page, String row, int caret) {
        List<String> before = new ArrayList<>();
        page.rows().stream()
                .takeWhile(each -> !each.id().equals(row))
                .filter(Row.Snippet.class::isInstance)
                .forEach(each -> addAll(each.text(), before));
        String text = page.row(row).orElseThrow().text();
        String upTo = text.substring(0, Math.max(0, Math.min(caret, text.length())));
        String last = split(upTo, before);
        return new Typed(before, last, upTo.length() - last.length());
    }

    /** Adds the snippets of a row above; an expression at its end gives no name and is left out. */
    private void addAll(String text, List<String> snippets) {
        CompletionInfo last = analysis.analyzeCompletion(split(text, snippets));
        if (last.completeness() == Completeness.COMPLETE_WITH_SEMI && last.source() != null) {
            snippets.add(last.source());
        }
    }

    /** Adds all snippets of a text that are ended to a list, and returns the one that could go on. */
    private String split(String text, List<String> snippets) {
        String rest = text;
        while (true) {
            CompletionInfo info = analysis.analyzeCompletion(rest);
            if (info.completeness() != Completeness.COMPLETE || !isEnded(info.source())) {
                return rest;
            }
            snippets.add(info.source());
            rest = info.remaining() == null ? "" : info.remaining();
        }
    }

    private static boolean isEnded(String source) {
        String code = source == null ? "" : source.strip();
        return code.endsWith(";") || code.endsWith("}");
    }

    /** Makes the shell know these snippets and no others; what it knew before from the same beginning stays. */
    private void declare(List<String> wanted) {
        if (!imported) {
            imported = true;
            Prelude.IMPORTS.forEach(shell::eval);
        }
        int same = 0;
        while (same < Math.min(declared.size(), wanted.size())
                && declared.get(same).text().equals(wanted.get(same))) {
            same++;
        }
        forgetFrom(same);
        wanted.subList(same, wanted.size()).forEach(text -> declared.add(new Declared(text, shell.eval(text))));
    }

    private void forgetFrom(int place) {
        List<Declared> gone = declared.subList(place, declared.size());
        gone.stream()
                .flatMap(each -> each.events().stream())
                .map(SnippetEvent::snippet)
                .filter(snippet -> shell.status(snippet).isActive())
                .forEach(shell::drop);
        gone.clear();
    }

    @Override
    public synchronized void close() {
        shell.close();
    }
}
