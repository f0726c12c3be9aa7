package rakeline.engine.jshell;

import java.lang.reflect.Array;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.engine.Result;
import rakeline.engine.ResultCodec;
import rakeline.figure.Figure;
import rakeline.prelude.Pictures;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;

/** A snippet's value as a result, bounded; in the worker. */
final class Showing {
    /** Numbers that a figure may hold. */
    static final long NUMBERS = 1_000_000;

    private static final int LINE = 400;
    private static final int ELEMENTS = 20;
    private static final int TEXT = 64 * 1024;

    private Showing() {}

    static Result of(Object value) {
        if (value instanceof Figure figure) {
            return new Result.Shown(bounded(figure));
        }
        if (value instanceof String text) {
            return new Result.Text(bounded(text));
        }
        return new Result.Value(line(value), number(value).orElse(Double.NaN), Pictures.of(value));
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

    private static String line(Object value) {
        if (value instanceof Double number) {
            return Decimals.shortest(number);
        }
        if (value instanceof Float number) {
            return number.isNaN() || number.isInfinite()
                    ? number.toString()
                    : Decimals.shortest(Double.parseDouble(number.toString()));
        }
        return oneLine(several(value));
    }

    private static String several(Object value) {
        if (value instanceof Collection<?> elements) {
            return several(elements.stream(), elements.size());
        }
        if (value instanceof Map<?, ?> map) {
            return several(map.entrySet().stream(), map.size());
        }
        if (value != null && value.getClass().isArray()) {
            int size = Array.getLength(value);
            return several(IntStream.range(0, size).mapToObj(i -> Array.get(value, i)), size);
        }
        return words(value);
    }

    /** The first elements; what an element holds in its turn is left to its own toString, but numbers are ours. */
    private static String several(Stream<?> elements, int size) {
        String joined = elements.limit(ELEMENTS)
                .map(element -> element instanceof Number ? line(element) : words(element))
                .collect(Collectors.joining(", "));
        return size <= ELEMENTS ? "[" + joined + "]" : "[" + joined + ", … " + size + " in all]";
    }

    private static String words(Object value) {
        try {
            String words = String.valueOf(value);
            return value != null && words.equals(identity(value)) ? described(value.getClass()) : words;
        } catch (RuntimeException e) {
            return "a " + value.getClass().getSimpleName() + " whose toString() throws "
                    + e.getClass().getSimpleName();
        }
    }

    /** What an object says that has no words of its own; its number differs from run to run. */
    private static String identity(Object value) {
        return value.getClass().getName() + "@" + Integer.toHexString(value.hashCode());
    }

    private static String described(Class<?> type) {
        if (type.isSynthetic()) {
            return "a function";
        }
        boolean named = !type.isAnonymousClass() && !type.getSimpleName().startsWith("$");
        return named ? "an object of " + type.getSimpleName() : "an object";
    }
}
