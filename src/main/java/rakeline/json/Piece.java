package rakeline.json;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import rakeline.quantity.Nearest;
import rakeline.quantity.Refusal;

/**
 * A piece of a JSON text with the place where it stands.
 *
 * @param path as {@code rows[3].note[0]}; empty for the whole
 * @param line from 1
 * @param value a map of pieces, a list of pieces, a string, a number, a boolean or {@link #NOTHING}
 */
public record Piece(String path, int line, Object value) {
    /** The value of {@code null}. */
    public static final Object NOTHING = new Object();

    /** A number, as written and as read. */
    public record Figure(String written, double value) {}

    /** The refusal of this piece; the sentence goes on after its place and ends without a full stop. */
    public Refusal refusal(String sentence) {
        return new Refusal(place() + " " + sentence + (sentence.endsWith("?") ? "" : "."));
    }

    public String place() {
        return path.isEmpty() ? "the file" : path + " (line " + line + ")";
    }

    /** Refuses this piece's value, saying what is accepted instead. */
    public Refusal unlike(String accepted) {
        return refusal("is " + shown() + "; accepted is " + accepted);
    }

    /** The value as it can stand in a sentence. */
    public String shown() {
        if (value instanceof Map) {
            return "a group";
        }
        if (value instanceof List) {
            return "a list";
        }
        return value instanceof String text ? "\"" + Quote.of(text) + "\"" : written();
    }

    private String written() {
        String written = value instanceof Figure number ? number.written() : String.valueOf(value);
        return value == NOTHING ? "null" : Quote.of(written);
    }

    /** The members of a group, by name. */
    @SuppressWarnings("unchecked")
    public Map<String, Piece> members() {
        if (value instanceof Map<?, ?> members) {
            return (Map<String, Piece>) members;
        }
        throw unlike("a group in { }");
    }

    /**
     * The members of a group whose names are known.
     *
     * @param what the group is, as {@code a row}
     */
    public Map<String, Piece> members(String what, Collection<String> known) {
        Map<String, Piece> members = members();
        members.forEach((key, piece) -> {
            if (!known.contains(key)) {
                String otherwise = "; accepted are " + String.join(", ", known);
                String near = Nearest.of(key, known)
                        .map(name -> "; did you mean " + name + "?")
                        .orElse(otherwise);
                throw piece.refusal("is not known in " + what + near);
            }
        });
        return members;
    }

    /** A member that must be there. */
    public Piece member(String key) {
        Piece member = members().get(key);
        if (member == null) {
            throw refusal("has no \"" + key + "\", which every one needs");
        }
        return member;
    }

    @SuppressWarnings("unchecked")
    public List<Piece> items() {
        if (value instanceof List<?> items) {
            return (List<Piece>) items;
        }
        throw unlike("a list in [ ]");
    }

    public <T> List<T> each(Function<Piece, T> read) {
        return items().stream().map(read).toList();
    }

    public String text() {
        if (value instanceof String text) {
            return text;
        }
        throw unlike("text in quotation marks");
    }

    /** Text without a line break. */
    public String oneLine() {
        String text = text();
        if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
            throw refusal("holds a line break; accepted is one line in each item");
        }
        return text;
    }

    /** A finite number. */
    public double number() {
        if (value instanceof Figure number && Double.isFinite(number.value())) {
            return number.value();
        }
        throw unlike("a finite number with a decimal point, without a unit, as in 71.3");
    }

    public int whole() {
        if (value instanceof Figure number && number.value() == (int) number.value()) {
            return (int) number.value();
        }
        throw unlike("a whole number");
    }

    public boolean flag() {
        if (value instanceof Boolean flag) {
            return flag;
        }
        throw unlike("true or false");
    }

    /** One of a few values, by its word. */
    public <E extends Enum<E>> E oneOf(E[] values) {
        List<String> words = Arrays.stream(values).map(Piece::word).toList();
        int index = words.indexOf(text());
        if (index < 0) {
            throw unlike(String.join(", ", words));
        }
        return values[index];
    }

    /** How a value of an enum is written in a file. */
    public static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
