package rakeline.handout;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * When a handout was made, by which version, from what.
 *
 * @param sources what it was made from, each with the SHA-256 of its bytes
 */
public record Imprint(String version, ZonedDateTime made, List<Source> sources) {
    private static final int SHORT = 16;
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm (xxx)", Locale.ENGLISH);

    /** One thing that a handout was made from. */
    public record Source(String name, String sha256) {
        public static Source of(String name, byte... content) {
            try {
                byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
                return new Source(name, HexFormat.of().formatHex(digest));
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException("every Java has SHA-256", e);
            }
        }

        /** Of content in UTF-8. */
        public static Source of(String name, String content) {
            return of(name, content.getBytes(StandardCharsets.UTF_8));
        }
    }

    public Imprint {
        sources = List.copyOf(sources);
    }

    /** The same on one line, each SHA-256 by its beginning. */
    public String line() {
        String from = sources.stream()
                .map(source -> source.name() + " (SHA-256 " + source.sha256().substring(0, SHORT) + "…)")
                .collect(Collectors.joining(", "));
        return "Made on " + MOMENT.format(made) + " with Rakeline " + version + " from " + from + ".";
    }

    /** The last lines of a sheet. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("Made on " + MOMENT.format(made) + " with Rakeline " + version + ".");
        sources.forEach(source -> lines.add("From " + source.name() + ", SHA-256 " + source.sha256() + "."));
        return lines;
    }
}
