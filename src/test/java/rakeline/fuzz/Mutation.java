package rakeline.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Changes a file as damage, ill will and other programs do; the same seed gives the same change. */
final class Mutation {
    private static final Pattern VALUE =
            Pattern.compile("\"[^\"\\n]*\"|-?[0-9]+(?:\\.[0-9]+)?|true|false|null|[\\[\\]{},:]");
    private static final List<String> OTHERS = List.of(
            "null",
            "true",
            "-1",
            "1e308",
            "1e999",
            "NaN",
            "-Infinity",
            "71,3",
            "0.1e-400",
            "99999999999999999999",
            "\"\"",
            "\"\\ud800\"",
            "\"\\u0000\"",
            "\"../../../../etc/passwd\"",
            "\"a\\nb\"",
            "\"" + "long".repeat(2000) + "\"",
            "[]",
            "{}",
            "[".repeat(40) + "]".repeat(40),
            "{\"a\":".repeat(200),
            "{\"format\": 1}",
            "]",
            "}",
            ",",
            "9".repeat(2000));

    private final Random random;

    Mutation(long seed) {
        random = new Random(seed);
    }

    /** One to four changes, each of a piece of the text or of raw bytes. */
    byte[] of(byte[] file) {
        byte[] changed = file;
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            changed = random.nextInt(3) == 0 ? bytes(changed) : pieces(changed);
        }
        return changed;
    }

    private byte[] pieces(byte[] file) {
        String text = new String(file, UTF_8);
        List<MatchResult> pieces = VALUE.matcher(text).results().toList();
        if (pieces.isEmpty()) {
            return file;
        }
        MatchResult piece = pieces.get(random.nextInt(pieces.size()));
        MatchResult other = pieces.get(random.nextInt(pieces.size()));
        String in = switch (random.nextInt(6)) {
            case 0 -> "";
            case 1 -> other.group();
            case 2 -> piece.group() + piece.group();
            case 3, 4 -> piece.group().replaceAll("[0-9](?=[^0-9]*$)", String.valueOf(random.nextInt(10)));
            default -> OTHERS.get(random.nextInt(OTHERS.size()));
        };
        return (text.substring(0, piece.start()) + in + text.substring(piece.end())).getBytes(UTF_8);
    }

    private byte[] bytes(byte[] file) {
        if (file.length == 0) {
            return new byte[] {(byte) random.nextInt(256)};
        }
        byte[] changed = file.clone();
        int at = random.nextInt(file.length);
        switch (random.nextInt(3)) {
            case 0 -> changed[at] = (byte) random.nextInt(256);
            case 1 -> changed = Arrays.copyOf(file, at);
            default -> random.nextBytes(changed);
        }
        return changed;
    }
}
