package rakeline.engine.jshell;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Collection;
import java.util.Optional;
import rakeline.engine.Result;
import rakeline.engine.ResultCodec;
import rakeline.figure.Figure;
import rakeline.prelude.Pictures;
import rakeline.quantity.Refusal;

/** A snippet's value as a result, bounded; in the worker. */
final class Showing {
    /** Numbers that a figure may hold. */
    static final long NUMBERS = 1_000_000;

    private static final int LINE = 400;
    private static final int TEXT = 64 * 1024;

    private Showing() {}

    static Result of(Object value) {
        if (value instanceof Figure figure) {
            return new Result.Shown(bounded(figure));
        }
        if (value instanceof Optional<?> held && held.isPresent() && held.get() instanceof Figure figure) {
            return of(figure);
        }
        if (value instanceof String text) {
            return new Result.Text(bounded(text));
        }
        return new Result.Value(oneLine(ValueLine.of(value)), number(value).orElse(Double.NaN), Pictures.of(value));
    }

    /** Whether a later method call could change the value: not so for numbers, words, enums and our own. */
    static boolean canChange(Object value) {
        if (value == null || value instanceof Enum<?> || isOurs(value.getClass())) {
            return false;
        }
        if (value instanceof Collection<?> elements
                && value.getClass().getName().startsWith("java.util.ImmutableCollections$")) {
            return elements.size() > NUMBERS || elements.stream().anyMatch(Showing::canChange);
        }
        return !(value instanceof String
                || value instanceof Boolean
                || value instanceof Character
                || value instanceof BigDecimal
                || value instanceof BigInteger
                || isBoxed(value)
                || value.getClass().getName().startsWith("java.time."));
    }

    /** On one line, shortened where it is long. */
    static String oneLine(String text) {
        String line = text.length() > LINE ? text.substring(0, LINE) + " …" : text;
        return line.replaceAll("\\R", " ");
    }

    private static boolean isOurs(Class<?> type) {
        return type.getName().startsWith("rakeline.");
    }

    private static boolean isBoxed(Object value) {
        return value instanceof Number && value.getClass().getName().startsWith("java.lang.");
    }

    private static Figure bounded(Figure figure) {
        long numbers = ResultCodec.numbers(figure);
        if (numbers > NUMBERS) {
            throw new Refusal("The result holds " + numbers + " numbers; at most " + NUMBERS + " are shown.");
        }
        return figure;
    }

    private static String bounded(String text) {
        return text.length() <= TEXT
                ? text
                : text.substring(0, TEXT) + "\n… the text has " + text.length() + " letters; the first " + TEXT
                        + " are shown.";
    }

    private static Optional<Double> number(Object value) {
        return value instanceof Number number ? Optional.of(number.doubleValue()) : Optional.empty();
    }
}
