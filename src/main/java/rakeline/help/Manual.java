package rakeline.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What the library's declarations say of themselves: for each public method and type its documentation, by a key like
 * {@code Sweeping.hold(String,double)} or {@code Sweeping}. The build writes it, see {@link ManualWriter}.
 *
 * @param entries documentation in plain text, by key
 */
public record Manual(Map<String, String> entries) {
    /** Where the build puts it. */
    static final String RESOURCE = "manual.tsv";

    private static final Pattern ANNOTATED = Pattern.compile("@\\w+\\s+");
    private static final Pattern GENERIC = Pattern.compile("<[^<>]*>");
    private static final Pattern PACKAGE = Pattern.compile("\\b[a-z]\\w*\\.(?=[\\w.]*[A-Z])");

    public Manual {
        entries = Map.copyOf(entries);
    }

    /** The manual that came with the program; empty where the build wrote none. */
    public static Manual load() {
        try (InputStream in = Manual.class.getResourceAsStream(RESOURCE)) {
            return in == null ? new Manual(Map.of()) : read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads lines of key, tabulator, text. */
    static Manual read(String lines) {
        Map<String, String> entries = new LinkedHashMap<>();
        lines.lines()
                .map(line -> line.split("\t", 2))
                .filter(parts -> parts.length == 2)
                .forEach(parts -> entries.put(parts[0], parts[1]));
        return new Manual(entries);
    }

    /** The lines that {@link #read} reads, sorted. */
    String write() {
        return entries.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> entry.getKey() + "\t" + entry.getValue() + "\n")
                .collect(Collectors.joining());
    }

    /** What a method is for, by the name of its class, its own, and the simple names of its parameters' types. */
    public Optional<String> method(String type, String name, List<String> parameterTypes) {
        return Optional.ofNullable(entries.get(key(type, name, parameterTypes)));
    }

    static String key(String type, String name, List<String> parameterTypes) {
        return type + "." + name + "(" + String.join(",", parameterTypes) + ")";
    }

    /**
     * What a signature in words is for, as in {@code Sweeping Sweeping.hold(String measure, double value)}; names of
     * parameters, type arguments and packages do not count.
     */
    public Optional<String> signature(String words) {
        int open = words.indexOf('(');
        int close = words.lastIndexOf(')');
        if (open < 0 || close < open) {
            return Optional.ofNullable(entries.get(simple(words)));
        }
        String head = bare(words.substring(0, open));
        String callee = head.substring(head.lastIndexOf(' ') + 1);
        String types = List.of(bare(words.substring(open + 1, close)).split(",")).stream()
                .map(String::strip)
                .map(each -> each.contains(" ") ? each.substring(0, each.lastIndexOf(' ')) : each)
                .collect(Collectors.joining(","));
        return Optional.ofNullable(entries.get(callee + "(" + types + ")"));
    }

    private static String simple(String words) {
        String bare = bare(words);
        return bare.substring(bare.lastIndexOf(' ') + 1);
    }

    /** A signature without packages and annotations, for people. */
    public static String plain(String signature) {
        return PACKAGE.matcher(ANNOTATED.matcher(signature).replaceAll(""))
                .replaceAll("")
                .strip();
    }

    static String bare(String words) {
        String plain = ANNOTATED.matcher(words).replaceAll("");
        String before;
        do {
            before = plain;
            plain = GENERIC.matcher(before).replaceAll("");
        } while (!plain.equals(before));
        return PACKAGE.matcher(plain).replaceAll("").strip();
    }
}
