package rakeline.shell.guide;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.figure.Figure;
import rakeline.prelude.Pictures;
import rakeline.quantity.Quantity;
import rakeline.shell.ledger.CodeHelp;

/**
 * One entry of the guide.
 *
 * @param names by which it is found: a key, a constant, a word of a row, or the name of the topic
 * @param title as in the list
 * @param text CommonMark
 */
record Topic(List<String> names, String title, String text) {
    private static final List<String> WRITTEN =
            List.of("start", "rows", "dials", "views", "writing", "figures", "files", "running");

    Topic {
        names = List.copyOf(names);
    }

    /** All entries: how the window works, then every word of a row, then every quantity. */
    static List<Topic> all(CodeHelp help) {
        List<Topic> all = new ArrayList<>();
        WRITTEN.forEach(name -> all.add(written(name)));
        help.preludeWords().forEach((word, lines) -> all.add(word(word, lines)));
        help.glossary()
                .keys()
                .forEach(key -> help.glossary().find(key).ifPresent(quantity -> all.add(quantity(help, quantity))));
        return List.copyOf(all);
    }

    private static Topic written(String name) {
        try (InputStream in = Topic.class.getResourceAsStream(name + ".md")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            String title = text.lines().findFirst().orElseThrow().replaceFirst("^# ", "");
            return new Topic(List.of(name), title, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is known of a word, its signatures among it. */
    static Topic word(String word, List<String> lines) {
        return new Topic(List.of(word), word + "(…)", text(word, lines.stream().map(Topic::signatureOrWords)));
    }

    private static String signatureOrWords(String line) {
        return line.matches("[^ ]+ [\\w.]+\\(.*\\)") ? "`" + line + "`" : plain(line);
    }

    private static Topic quantity(CodeHelp help, Quantity quantity) {
        List<String> lines = help.glossary().entry(quantity);
        List<String> names = Stream.concat(
                        Stream.of(quantity.key()),
                        help.glossary().constants().entrySet().stream()
                                .filter(entry -> entry.getValue().equals(quantity.key()))
                                .map(entry -> entry.getKey()))
                .toList();
        String title = quantity.label() + " · " + quantity.key();
        return new Topic(names, title, text(quantity.label(), lines.stream().map(Topic::plain)));
    }

    private static String text(String title, Stream<String> paragraphs) {
        return "# " + plain(title) + "\n\n" + String.join("\n\n", paragraphs.toList());
    }

    /** Words that CommonMark shows as they are. */
    private static String plain(String words) {
        return words.replaceAll("([\\\\`*_{}\\[\\]<>#+!|~&-])", "\\\\$1");
    }

    /** What it looks like, where it is a quantity that a drawing shows. */
    Optional<Figure> drawing() {
        return names.stream().flatMap(name -> Pictures.ofKey(name).stream()).findFirst();
    }

    boolean isCalled(String name) {
        return names.contains(name);
    }

    /** Those that have words in their title or names, then those that have them, or each of them, in their text. */
    static List<Topic> find(List<Topic> all, String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        List<Topic> called =
                all.stream().filter(topic -> topic.isCalledLike(wanted)).toList();
        Stream<Topic> said =
                all.stream().filter(topic -> !called.contains(topic) && topic.says(List.of(wanted.split("\\s+"))));
        return Stream.concat(called.stream(), said).toList();
    }

    private boolean isCalledLike(String wanted) {
        return Stream.concat(Stream.of(title), names.stream())
                .anyMatch(each -> each.toLowerCase(Locale.ROOT).contains(wanted));
    }

    /** Whether title and text have each of these words in them. */
    private boolean says(List<String> words) {
        String all = (title + "\n" + text.replace("\\", "")).toLowerCase(Locale.ROOT);
        return words.stream().allMatch(all::contains);
    }

    @Override
    public String toString() {
        return title;
    }
}
