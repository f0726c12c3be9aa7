package rakeline.engine.jshell;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The classes of snippets, by their names in a worker. JShell gives a snippet that comes again the name that it had
 * before, and a worker cannot take another class of that name: {@code REPL.$JShell$12} comes there as
 * {@code REPL.$JShell$12v2} the second time, and what is compiled against it from then on means that one.
 */
final class SnippetClasses {
    /** The class of one snippet, or of several that are compiled together; a version follows, or a nested class. */
    private static final Pattern OUTER = Pattern.compile("REPL[./]\\$JShell\\$\\d+[A-Z]*(?:_\\d+[A-Z]*)*");

    private static final Pattern PREFIX = Pattern.compile(OUTER.pattern() + "(?:v\\d+)?(?:[.$]|$)");

    private final Map<String, Integer> versions = new HashMap<>();
    private final Map<String, String> names = new HashMap<>();
    private final Map<String, byte[]> known = new LinkedHashMap<>();

    /** Takes classes that were compiled together, by the names that JShell gave them; those that are news, renamed. */
    Map<String, byte[]> take(Map<String, byte[]> compiled) {
        Map<String, Map<String, byte[]>> bySnippet = new LinkedHashMap<>();
        compiled.forEach((name, bytes) -> bySnippet
                .computeIfAbsent(outer(name), any -> new LinkedHashMap<>())
                .put(name, bytes));
        takeNews(bySnippet);
        Map<String, byte[]> news = renamed(compiled);
        news.keySet().removeAll(known.keySet());
        known.putAll(news);
        return news;
    }

    /** One that is news makes those news that mean it. */
    private void takeNews(Map<String, Map<String, byte[]>> bySnippet) {
        Set<String> news = bySnippet.keySet().stream()
                .filter(outer -> isNews(bySnippet.get(outer)))
                .collect(Collectors.toSet());
        if (!news.isEmpty()) {
            news.forEach(this::nameAnew);
            bySnippet.keySet().removeAll(news);
            takeNews(bySnippet);
        }
    }

    private void nameAnew(String outer) {
        int version = versions.merge(outer, 1, Integer::sum);
        names.put(outer, version == 1 ? outer : outer + "v" + version);
    }

    /** A class that JShell compiled once more, under another name, is one that a worker has. */
    void callSame(String compiled, String inWorker) {
        names.put(compiled, inWorker);
    }

    private boolean isNews(Map<String, byte[]> classes) {
        return renamed(classes).entrySet().stream()
                .anyMatch(named -> !Arrays.equals(named.getValue(), known.get(named.getKey())));
    }

    private Map<String, byte[]> renamed(Map<String, byte[]> classes) {
        Map<String, byte[]> renamed = new LinkedHashMap<>();
        classes.forEach((name, bytes) -> renamed.put(nameOf(name), ClassFile.renamed(bytes, this::nameOf)));
        return renamed;
    }

    /** All that were taken, by their names in a worker. */
    Map<String, byte[]> all() {
        return known;
    }

    /** The text with the names in force for those that JShell gave, be they written with dots or with slashes. */
    String nameOf(String text) {
        return OUTER.matcher(text).replaceAll(found -> Matcher.quoteReplacement(nameOf(found)));
    }

    private String nameOf(MatchResult found) {
        boolean slashes = found.group().indexOf('/') >= 0;
        String dotted = found.group().replace('/', '.');
        String name = names.getOrDefault(dotted, dotted);
        return slashes ? name.replace('.', '/') : name;
    }

    /** The text as its author knows it, without the classes that hold snippets. */
    static String expunged(String text) {
        return PREFIX.matcher(text).replaceAll("");
    }

    private static String outer(String name) {
        Matcher found = OUTER.matcher(name);
        return found.lookingAt() ? found.group() : name;
    }
}
