package rakeline.engine.jshell;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import rakeline.engine.Suggestions;
import rakeline.prelude.Prelude;
import rakeline.quantity.Declared;
import rakeline.quantity.Keyed;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** Words from a JShell that has compiled the rows above and run none of them; one call at a time. */
final class WordFinder implements Suggestions {
    /** Of how many words the signatures are looked up. */
    private static final int MOST_SIGNED = 60;

    /** The constants of inputs and measures: offered where one of their type is wanted, and nowhere else. */
    private static final Set<String> CONSTANTS = Prelude.CONSTANTS.stream()
            .flatMap(holder -> Declared.in(holder, Keyed.class).keySet().stream())
            .collect(Collectors.toUnmodifiableSet());

    /** What every value of Java can be asked, and no page asks. */
    private static final Set<String> OF_ANY_OBJECT =
            Stream.of(Object.class.getMethods()).map(Method::getName).collect(Collectors.toUnmodifiableSet());

    private static final Pattern QUOTES = Pattern.compile("\"+$");
    private static final Pattern GENERIC = Pattern.compile("<[^<>]*>");
    private static final Pattern COMMA = Pattern.compile(",\\s*");

    private final JShell shell = Shells.open(new Unrun());
    private final SourceCodeAnalysis analysis = shell.sourceCodeAnalysis();
    private final List<Known> declared = new ArrayList<>();
    private boolean imported;

    /** A snippet that the shell knows. */
    private record Known(String text, List<SnippetEvent> events) {}

    /** The snippet that is being typed, up to the caret, and those before it. */
    private record Typed(List<String> before, String last, int offset) {}

    @Override
    public synchronized Offer at(Worksheet page, String row, int caret) {
        Typed typed = typed(page, row, caret);
        declare(typed.before());
        Caret end = Caret.atEndOf(typed.last());
        return switch (end.place()) {
            case TEXT -> quoted(typed, end);
            case COMMENT -> new Offer(typed.offset() + end.start(), List.of(), Set.of());
            case CODE -> coded(typed);
        };
    }

    /** Java knows which methods can be meant, and what their parameters are called. */
    private Offer quoted(Typed typed, Caret caret) {
        String before = QUOTES.matcher(typed.last().substring(0, caret.start())).replaceFirst("");
        Set<String> parameters = analysis.documentation(before, before.length(), false).stream()
                .flatMap(found -> textParameter(found.signature(), caret.argument()).stream())
                .collect(Collectors.toSet());
        return new Offer(typed.offset() + caret.start(), List.of(), parameters);
    }

    /** The name of a parameter of a method, where it is a text. */
    static Optional<String> textParameter(String signature, int argument) {
        String plain = signature;
        while (GENERIC.matcher(plain).find()) {
            plain = GENERIC.matcher(plain).replaceAll("");
        }
        String[] all = COMMA.split(
                plain.substring(plain.indexOf('(') + 1, Math.max(plain.indexOf('(') + 1, plain.lastIndexOf(')'))), -1);
        String meant = all[Math.min(argument, all.length - 1)];
        boolean takes = argument < all.length ? meant.startsWith("String") : meant.startsWith("String...");
        return takes ? Optional.of(meant.substring(meant.lastIndexOf(' ') + 1)) : Optional.empty();
    }

    private Offer coded(Typed typed) {
        int[] anchor = {0};
        List<SourceCodeAnalysis.Suggestion> found =
                analysis.completionSuggestions(typed.last(), typed.last().length(), anchor);
        String head = typed.last().substring(0, anchor[0]);
        List<String> words = found.stream()
                .filter(each -> each.matchesType() || !CONSTANTS.contains(each.continuation()))
                .filter(each -> !head.endsWith(".") || !OF_ANY_OBJECT.contains(bare(each.continuation())))
                .sorted(Comparator.comparing(WordFinder::rank))
                .map(SourceCodeAnalysis.Suggestion::continuation)
                .distinct()
                .toList();
        boolean few = words.size() <= MOST_SIGNED;
        return new Offer(
                typed.offset() + anchor[0],
                words.stream()
                        .map(word -> new Suggestion(word, few ? signatures(head + word) : List.of()))
                        .toList(),
                Set.of());
    }

    /** What fits, then what could lead there, then packages. */
    private static int rank(SourceCodeAnalysis.Suggestion found) {
        return found.continuation().endsWith(".") ? 2 : found.matchesType() ? 0 : 1;
    }

    private static String bare(String word) {
        return word.contains("(") ? word.substring(0, word.indexOf('(')) : "";
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
        wanted.subList(same, wanted.size()).forEach(text -> declared.add(new Known(text, shell.eval(text))));
    }

    private void forgetFrom(int place) {
        List<Known> gone = declared.subList(place, declared.size());
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
