package rakeline.catalogue.chart;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rakeline.geometry.Setting;
import rakeline.quantity.Nearest;

/** What headings mean: keys as they are, and the words of the trade, which are kept as data beside this class. */
final class ChartWords {
    static final String NAME = "name";
    static final String SIZE = "size";

    private static final String DOUBTFUL = "doubtful: ";
    private static final List<String> GROUPS = List.of("frame.", "fork.", "wheels.both.", "charted.");
    private static final Map<String, String> SPELT_OUT = Map.ofEntries(
            Map.entry("cs", "chainstay"),
            Map.entry("chainstays", "chainstay"),
            Map.entry("wb", "wheelbase"),
            Map.entry("fc", "front centre"),
            Map.entry("ett", "effective top tube"),
            Map.entry("hta", "head tube angle"),
            Map.entry("sta", "seat tube angle"),
            Map.entry("htl", "head tube length"),
            Map.entry("eff", "effective"),
            Map.entry("effec", "effective"),
            Map.entry("virt", "virtual"),
            Map.entry("horiz", "horizontal"),
            Map.entry("hor", "horizontal"),
            Map.entry("ang", "angle"),
            Map.entry("len", "length"),
            Map.entry("lgth", "length"),
            Map.entry("ht", "head tube"),
            Map.entry("st", "seat tube"),
            Map.entry("tt", "top tube"),
            Map.entry("bb", "bottom bracket"),
            Map.entry("center", "centre"),
            Map.entry("tire", "tyre"),
            Map.entry("tires", "tyres"));
    private static final Set<String> WORDS = new TreeSet<>();
    private static final Map<String, String> KEYS = read();
    private static final Pattern UNIT =
            Pattern.compile("(.*?)[\\s,(\\[]*(?<![a-z])(" + ChartUnit.pattern() + ")[.)\\]]*\\s*");
    private static final Pattern NUMBERED = Pattern.compile("^[a-z0-9]{1,2}[.):]\\s+");

    private ChartWords() {}

    /** A heading that is a key of a bike file, name, or one that other rules know. */
    static boolean isKey(String heading) {
        return Setting.keys().contains(heading.strip());
    }

    /** What a heading of words means: a key, {@link #NAME} or {@link #SIZE}; empty where it is not known. */
    static Optional<String> meaning(String heading) {
        String plain = plain(words(heading));
        boolean angle = unit(heading).filter(ChartUnit::isAngle).isPresent();
        String asAngle = KEYS.get(canonical(plain + " angle"));
        String key = angle && asAngle != null ? asAngle : KEYS.get(canonical(plain));
        return Optional.ofNullable(key)
                .filter(known -> !known.startsWith(DOUBTFUL))
                .or(() -> ofName(heading.strip()));
    }

    /** The key that a heading is the last part of, as in {@code stackMm}. */
    private static Optional<String> ofName(String heading) {
        return GROUPS.stream()
                .map(group -> group + heading)
                .filter(ChartWords::isKey)
                .findFirst();
    }

    /** Why a heading is left out. */
    static String reason(String heading) {
        String key = KEYS.getOrDefault(canonical(plain(words(heading))), "");
        if (key.startsWith(DOUBTFUL)) {
            return key.substring(DOUBTFUL.length()) + ".";
        }
        return "it is not known" + Nearest.hint(plain(words(heading)), WORDS);
    }

    /** The unit that a heading ends in. */
    static Optional<ChartUnit> unit(String heading) {
        Matcher matcher = UNIT.matcher(heading.toLowerCase(Locale.ROOT).strip());
        return matcher.matches() && !matcher.group(1).isBlank() ? ChartUnit.of(matcher.group(2)) : Optional.empty();
    }

    private static String words(String heading) {
        String small = heading.toLowerCase(Locale.ROOT).strip();
        Matcher matcher = UNIT.matcher(small);
        String bare = matcher.matches() && !matcher.group(1).isBlank() ? matcher.group(1) : small;
        return NUMBERED.matcher(bare).replaceFirst("");
    }

    private static String plain(String words) {
        return words.replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    /** Short words spelt out and all words in one order: top tube (eff.) is effective top tube. */
    private static String canonical(String plain) {
        return Arrays.stream(plain.split(" ", -1))
                .flatMap(
                        word -> Arrays.stream(SPELT_OUT.getOrDefault(word, word).split(" ", -1)))
                .sorted()
                .collect(Collectors.joining(" "));
    }

    private static Map<String, String> read() {
        try (InputStream in = ChartWords.class.getResourceAsStream("words.txt")) {
            Map<String, String> keys = new HashMap<>();
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .forEach(line -> put(keys, line));
            return Map.copyOf(keys);
        } catch (IOException e) {
            throw new UncheckedIOException("the words are part of the program", e);
        }
    }

    private static void put(Map<String, String> keys, String line) {
        int end = line.lastIndexOf(';');
        for (String word : line.substring(end + 1).split(",", -1)) {
            WORDS.add(word.strip());
            keys.put(canonical(word.strip()), line.substring(0, end));
        }
    }
}
