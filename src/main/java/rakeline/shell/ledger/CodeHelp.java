package rakeline.shell.ledger;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import rakeline.catalogue.Roots;
import rakeline.engine.Suggestions;
import rakeline.help.Glossary;
import rakeline.help.Manual;
import rakeline.prelude.NamedText;
import rakeline.prelude.Prelude;
import rakeline.quantity.Lazy;
import rakeline.quantity.Quantity;
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

    private final Function<Optional<Path>, Roots> roots;

    /**
     * @param suggestions opens what knows Java and the rows above; called off the event thread
     * @param roots where the rows of a page find files, by the folder that the page is in
     */
    public CodeHelp(Vocabulary vocabulary, Supplier<Suggestions> suggestions, Function<Optional<Path>, Roots> roots) {
        glossary = Glossary.of(vocabulary.quantities(), vocabulary.constants());
        opens = suggestions;
        this.roots = roots;
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

    private static Stream<Method> methods() {
        return Prelude.FACADES.stream()
                .flatMap(facade -> Arrays.stream(facade.getDeclaredMethods()))
                .filter(method -> Modifier.isPublic(method.getModifiers()) && !method.isSynthetic());
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

    /**
     * Asks for what fits at a place; the answer comes on the event thread.
     *
     * @param folder that of the page, where it has one
     */
    void ask(Worksheet page, Optional<Path> folder, String row, int caret, Consumer<Offered> answer) {
        thread.execute(() -> {
            Offered found = offered(page, folder, row, caret);
            SwingUtilities.invokeLater(() -> answer.accept(found));
        });
    }

    /** What fits at a place; takes its time. */
    Offered offered(Worksheet page, Optional<Path> folder, String row, int caret) {
        Suggestions.Offer offer = suggestions().at(page, row, caret);
        Stream<Word> named = offer.parameters().stream()
                .flatMap(name -> NamedText.of(name).stream())
                .flatMap(text -> text.texts(roots.apply(folder)).stream())
                .distinct()
                .map(this::text);
        return new Offered(
                offer.from(),
                Stream.concat(offer.words().stream().map(this::word), named).toList());
    }

    /** Words for what is typed from a place of the text on, best first. */
    record Offered(int from, List<Word> words) {
        Offered {
            words = List.copyOf(words);
        }
    }

    private Word text(String text) {
        return glossary.find(text)
                .map(quantity -> new Word(text, quantity.heading(), glossary.entry(quantity)))
                .orElse(new Word(text, "", List.of()));
    }

    private Word word(Suggestions.Suggestion suggestion) {
        Optional<Quantity> constant = glossary.find(suggestion.word());
        if (constant.isPresent()) {
            return text(suggestion.word());
        }
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
