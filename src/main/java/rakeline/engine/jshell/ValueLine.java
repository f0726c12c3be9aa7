package rakeline.engine.jshell;

import java.lang.reflect.Array;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import java.util.stream.BaseStream;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.figure.Figure;
import rakeline.quantity.Decimals;

/** A value in words that are the same in every run: what it holds, so far as that goes, and no object's number. */
final class ValueLine {
    private static final int ELEMENTS = 20;
    private static final int DEPTH = 5;

    /** An object's number somewhere in a text, as {@code [D@1b2c3d}. */
    private static final Pattern NUMBERED = Pattern.compile("@[0-9a-f]+");

    private ValueLine() {}

    static String of(Object value) {
        return line(value, DEPTH);
    }

    private static String line(Object value, int depth) {
        if (value instanceof Double number) {
            return Decimals.shortest(number);
        }
        if (value instanceof Float number) {
            return number.isNaN() || number.isInfinite()
                    ? number.toString()
                    : Decimals.shortest(Double.parseDouble(number.toString()));
        }
        return depth > 0 ? several(value, depth - 1) : "…";
    }

    private static String several(Object value, int depth) {
        if (value instanceof Collection<?> elements) {
            return "[" + joined(elements.stream(), elements.size(), depth) + "]";
        }
        if (value instanceof Map<?, ?> map) {
            return "{" + joined(map.entrySet().stream(), map.size(), depth) + "}";
        }
        if (value != null && value.getClass().isArray()) {
            int size = Array.getLength(value);
            return "[" + joined(IntStream.range(0, size).mapToObj(i -> Array.get(value, i)), size, depth) + "]";
        }
        return single(value, depth);
    }

    private static String joined(Stream<?> elements, int size, int depth) {
        String joined =
                elements.limit(ELEMENTS).map(element -> line(element, depth)).collect(Collectors.joining(", "));
        return size <= ELEMENTS ? joined : joined + ", … " + size + " in all";
    }

    private static String single(Object value, int depth) {
        if (value instanceof Map.Entry<?, ?> entry) {
            return line(entry.getKey(), depth) + "=" + line(entry.getValue(), depth);
        }
        if (value instanceof Optional<?> held && held.isPresent()) {
            return "Optional[" + line(held.get(), depth) + "]";
        }
        if (value instanceof Figure figure) {
            return figure.title().isBlank() ? "a figure" : figure.title();
        }
        return value instanceof Record held ? record(held, depth) : words(value);
    }

    /** A record's own words, but what has none among its parts is said as it is elsewhere. */
    private static String record(Record value, int depth) {
        BiFunction<String, Object, String> said =
                (words, part) -> isWordless(part) ? words.replace(String.valueOf(part), line(part, depth)) : words;
        return Stream.of(value.getClass().getRecordComponents())
                .map(component -> part(value, component))
                .reduce(words(value), said, (first, second) -> second);
    }

    /** What a component of a record holds; empty words where Java does not give it out. */
    private static Object part(Record value, RecordComponent component) {
        try {
            component.getAccessor().trySetAccessible();
            return component.getAccessor().invoke(value);
        } catch (ReflectiveOperationException | RuntimeException e) {
            return "";
        }
    }

    private static boolean isWordless(Object value) {
        try {
            return NUMBERED.matcher(String.valueOf(value)).find();
        } catch (RuntimeException e) {
            return false;
        }
    }

    private static String words(Object value) {
        try {
            String words = String.valueOf(value);
            return value != null && isIdentity(value, words) ? described(value) : String.valueOf((Object) words);
        } catch (RuntimeException e) {
            return "a " + value.getClass().getSimpleName() + " whose toString() throws "
                    + e.getClass().getSimpleName();
        }
    }

    /** Whether words are what an object says that has none of its own; its number differs from run to run. */
    private static boolean isIdentity(Object value, String words) {
        String named = value.getClass().getName() + "@";
        return words != null && words.startsWith(named) && words.equals(named + Integer.toHexString(value.hashCode()));
    }

    private static String described(Object value) {
        Class<?> type = value.getClass();
        if (value instanceof BaseStream) {
            return "a stream";
        }
        if (type.isSynthetic()) {
            return "a function";
        }
        boolean named = !type.isAnonymousClass() && !type.getSimpleName().startsWith("$");
        return named ? "an object of " + type.getSimpleName() : "an object";
    }
}
