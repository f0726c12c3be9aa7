package rakeline.shell.ledger;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import rakeline.engine.Suggestions;
import rakeline.help.Glossary;
import rakeline.help.Manual;
import rakeline.prelude.Prelude;
import rakeline.quantity.Lazy;
import rakeline.study.Vocabulary;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** What all snippets of a window share: the words that fit anywhere, their meaning, and whom to ask for the others. */
public final class CodeHelp implements AutoCloseable {
    /**
     * A word that can be offered.
     *
     * @param brief what it is, in a few words
     * @param entry what it means, as lines of plain text
     */
    record Word(String text, String brief, List<String> entry) {
        Word {
            entry = List.copyOf(entry);
        }
    }

    private final ExecutorService thread = Executors.newSingleThreadExecutor(CodeHelp::named);
    private final Glossary glossary;
    private final Supplier<Suggestions> opens;
    private Optional<Suggestions> suggestions = Optional.empty();
    private final Lazy<Manual> manual = Lazy.of(Manual::load);
    private final Lazy<List<Word>> words = Lazy.of(this::collect);

    /**
     * @param suggestions opens what knows Java and the rows above; called off the event thread
     */
    public CodeHelp(Vocabulary vocabulary, Supplier<Suggestions> suggestions) {
        glossary = Glossary.of(vocabulary.quantities(), vocabulary.constants());
        opens = suggestions;
    }

    /** On the thread of the words alone. */
    private Suggestions suggestions() {
        if (suggestions.isEmpty()) {
            suggestions = Optional.of(opens.get());
        }
        return suggestions.get();
    }

    private static Thread named(Runnable work) {
        Thread thread = new Thread(work, "words");
        thread.setDaemon(true);
        return thread;
    }

    public Glossary glossary() {
        return glossary;
    }

    /** The words of the prelude, each with its signatures and what they are for. */
    public Map<String, List<String>> preludeWords() {
        return methods()
                .collect(Collectors.groupingBy(
                        Method::getName,
                        TreeMap::new,
                        Collectors.flatMapping(
                                method -> Stream.concat(Stream.of(signature(method)), about(method).stream()),
                                Collectors.toList())));
    }

    /** Keys, constants and the words of the prelude. */
    List<Word> words() {
        return words.get();
    }

    private List<Word> collect() {
        Stream<Word> named = glossary.beginning("").entrySet().stream()
                .map(entry -> new Word(entry.getKey(), entry.getValue().heading(), glossary.entry(entry.getValue())));
        return Stream.concat(named, methods().map(this::word)).toList();
    }

    private static Stream<Method> methods() {
        return Prelude.FACADES.stream()
                .flatMap(facade -> Arrays.stream(facade.getDeclaredMethods()))
                .filter(method -> Modifier.isPublic(method.getModifiers()) && !method.isSynthetic());
    }

    private Word word(Method method) {
        String signature = signature(method);
        return new Word(
                method.getName() + "(",
                signature,
                Stream.concat(Stream.of(signature), about(method).stream()).toList());
    }

    private static String signature(Method method) {
        return Arrays.stream(method.getParameters())
                .map(parameter -> parameter.getType().getSimpleName() + " " + parameter.getName())
                .collect(Collectors.joining(
                        ", ", method.getReturnType().getSimpleName() + " " + method.getName() + "(", ")"));
    }

    private Optional<String> about(Method method) {
        return manual.get()
                .method(
                        method.getDeclaringClass().getSimpleName(),
                        method.getName(),
                        Arrays.stream(method.getParameters())
                                .map(CodeHelp::type)
                                .toList());
    }

    private static String type(java.lang.reflect.Parameter parameter) {
        String simple = parameter.getType().getSimpleName();
        return parameter.isVarArgs() ? simple.replaceFirst("\\[\\]$", "...") : simple;
    }

    /** Asks for what fits at a place; the answer comes on the event thread. */
    void ask(Worksheet page, String row, int caret, Consumer<Offered> answer) {
        thread.execute(() -> {
            Suggestions.Offer offer = suggestions().at(page, row, caret);
            List<Word> found = offer.words().stream().map(this::word).toList();
            SwingUtilities.invokeLater(() -> answer.accept(new Offered(offer.from(), found)));
        });
    }

    /** Words for what is typed from a place of the text on. */
    record Offered(int from, List<Word> words) {}

    private Word word(Suggestions.Suggestion suggestion) {
        List<String> entry = suggestion.signatures().stream()
                .flatMap(signature -> Stream.concat(Stream.of(signature), manual.get().signature(signature).stream()))
                .toList();
        String brief = suggestion.signatures().isEmpty()
                ? ""
                : Manual.plain(suggestion.signatures().get(0));
        return new Word(suggestion.word(), brief, entry);
    }

    /** Asks what the word before a place means to Java; the answer, lines of plain text, comes on the event thread. */
    public void explain(Worksheet page, String row, int caret, Consumer<List<String>> answer) {
        thread.execute(() -> {
            List<String> found = suggestions().explain(page, row, caret).stream()
                    .flatMap(line -> Stream.concat(Stream.of(line), manual.get().signature(line).stream()))
                    .toList();
            SwingUtilities.invokeLater(() -> answer.accept(found));
        });
    }

    /** Begins, so that the first answer does not take long. */
    void warmUp() {
        Worksheet page = Worksheet.empty("").insert(0, Row.Snippet.of("r1", "Bik"));
        thread.execute(() -> suggestions().at(page, "r1", 3));
    }

    @Override
    public void close() {
        thread.execute(() -> suggestions.ifPresent(Suggestions::close));
        thread.shutdown();
    }
}
