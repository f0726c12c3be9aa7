package rakeline.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine;
import rakeline.quantity.Decimals;
import rakeline.quantity.Lazy;
import rakeline.quantity.Refusal;

/**
 * Where a command writes: data and messages apart, in UTF-8 whatever the platform.
 *
 * @param data standard output
 * @param messages standard error
 * @param watched whether messages go to a terminal, where someone can see a line change
 * @param lost what of the data did not get through, in one sentence
 */
public record Console(PrintStream data, PrintStream messages, boolean watched, Supplier<Optional<String>> lost) {
    /** Where Linux tells what standard error is. */
    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

    /** Made when the first command writes JSON: most write none, and it takes its time. */
    private static final Lazy<JsonMapper> JSON = Lazy.of(JsonMapper::new);

    /** The process's own streams. */
    public static Console standard() {
        return of(new FileOutputStream(FileDescriptor.out), System.err, isTerminal());
    }

    /** Any two streams. */
    public static Console of(OutputStream data, OutputStream messages) {
        return of(data, messages, false);
    }

    private static Console of(OutputStream data, OutputStream messages, boolean watched) {
        Delivery delivery = new Delivery(data);
        return new Console(utf8(delivery), utf8(messages), watched, delivery::lost);
    }

    /** Whether standard error is a terminal; where nothing tells, whether the process has one at all. */
    private static boolean isTerminal() {
        try {
            String error = Files.readSymbolicLink(STANDARD_ERROR).toString();
            return error.startsWith("/dev/pts/") || error.startsWith("/dev/tty") || error.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException e) {
            // no Linux: Java knows only of standard input and output together
            return CommandLine.Help.Ansi.AUTO.enabled();
        }
    }

    private static PrintStream utf8(OutputStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }

    /** Writes one JSON object on one line; numbers that are none are to be null already. */
    void json(Object value) {
        try {
            data.println(JSON.get().writeValueAsString(value));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can always be written", e);
        }
    }

    /** Says a sentence for people; its numbers have the hyphen, so that they can be typed again. */
    void message(String sentence) {
        messages.println(Decimals.typed(sentence));
    }

    /** The number, or null in place of NaN and infinities. */
    static Double orNull(double value) {
        return Double.isFinite(value) ? value : null;
    }

    /** A count that may be beyond what a long holds. */
    static BigInteger whole(double count) {
        return BigDecimal.valueOf(count).toBigInteger();
    }

    /** The number of a text with a decimal point. */
    static double number(String text, String place) {
        try {
            if (text.matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?")) {
                return Double.parseDouble(text);
            }
        } catch (NumberFormatException e) {
            throw new Refusal(place + " is " + text + "; accepted is a number with a decimal point.", e);
        }
        String said = text.isBlank() ? "empty" : text;
        throw new Refusal(place + " is " + said + "; accepted is a number with a decimal point.");
    }
}
