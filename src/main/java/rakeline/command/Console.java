package rakeline.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Supplier;
import rakeline.quantity.Decimals;
import rakeline.quantity.Lazy;
import rakeline.quantity.Refusal;

/**
 * Where a command writes: data and messages apart, in UTF-8 whatever the platform.
 *
 * @param data standard output
 * @param messages standard error
 * @param lost what of the data did not get through, in one sentence
 */
public record Console(PrintStream data, PrintStream messages, Supplier<Optional<String>> lost) {
    /** Made when the first command writes JSON: most write none, and it takes its time. */
    private static final Lazy<JsonMapper> JSON = Lazy.of(JsonMapper::new);

    /** The process's own streams. */
    public static Console standard() {
        return of(new FileOutputStream(FileDescriptor.out), System.err);
    }

    /** Any two streams. */
    public static Console of(OutputStream data, OutputStream messages) {
        Delivery delivery = new Delivery(data);
        return new Console(utf8(delivery), utf8(messages), delivery::lost);
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
