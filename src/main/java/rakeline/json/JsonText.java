package rakeline.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import rakeline.quantity.Refusal;

/**
 * Reads a JSON text in UTF-8 into pieces that know their place; bounded in depth, no key twice. A byte order mark is
 * dropped. Whoever calls bounds the size.
 */
public final class JsonText {
    private static final int DEEPEST = 30;
    private static final int QUOTED = 24;

    /** Pieces, a long place counting as several; beyond this a text is refused, however small its pieces are. */
    private static final int MOST_STEPS = 1_000_000;

    private static final int PLACE_IN_A_STEP = 64;
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?s).*[0-9],[0-9]+.?");
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
            .build();

    private final JsonParser parser;
    private int steps;

    private JsonText(JsonParser parser) {
        this.parser = parser;
    }

    /**
     * The whole text as one piece.
     *
     * @throws Refusal where it is not JSON, naming line and column
     */
    public static Piece parse(byte[] bytes) {
        return parse(Utf8.text(bytes));
    }

    private static Piece parse(String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            return new JsonText(parser).whole();
        } catch (JsonEOFException e) {
            throw new Refusal(
                    "line " + e.getLocation().getLineNr() + ": the file ends in the middle; it seems cut off.", e);
        } catch (StreamConstraintsException e) {
            throw new Refusal("the file holds a number or a name that is far too long.", e);
        } catch (JsonProcessingException e) {
            throw notJson(text, e);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", e);
        }
    }

    private Piece whole() throws IOException {
        parser.nextToken();
        Piece top = piece("", 0);
        if (parser.nextToken() != null) {
            throw new Refusal("line " + line() + ": something follows after the end.");
        }
        return top;
    }

    private Piece piece(String path, int depth) throws IOException {
        if (depth > DEEPEST) {
            throw new Refusal("line " + line() + ": the file is nested deeper than " + DEEPEST + " levels.");
        }
        steps += 1 + path.length() / PLACE_IN_A_STEP;
        if (steps > MOST_STEPS) {
            throw new Refusal(
                    "line " + line() + ": the file holds more values than can be read, about " + MOST_STEPS + ".");
        }
        int line = line();
        return new Piece(path, line, value(path, depth));
    }

    private Object value(String path, int depth) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> members(path, depth);
            case START_ARRAY -> items(path, depth);
            case VALUE_STRING -> parser.getText();
            case VALUE_TRUE, VALUE_FALSE -> parser.getBooleanValue();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Piece.Figure(parser.getText(), parser.getDoubleValue());
            default -> Piece.NOTHING;
        };
    }

    private Map<String, Piece> members(String path, int depth) throws IOException {
        Map<String, Piece> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            String inner = path.isEmpty() ? Quote.of(key) : path + "." + Quote.of(key);
            parser.nextToken();
            Piece former = members.put(key, piece(inner, depth + 1));
            if (former != null) {
                throw members.get(key).refusal("stands there a second time; the first is on line " + former.line());
            }
        }
        return members;
    }

    private List<Piece> items(String path, int depth) throws IOException {
        List<Piece> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(piece(path + "[" + items.size() + "]", depth + 1));
        }
        return items;
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    private static Refusal notJson(String text, JsonProcessingException e) {
        JsonLocation at = e.getLocation();
        int offset = (int) Math.max(0, Math.min(text.length() - 1, at.getCharOffset()));
        String before = text.substring(Math.max(0, offset - QUOTED), offset + 1);
        String hint = DECIMAL_COMMA.matcher(before).matches() ? "; a number takes the decimal point, as in 71.3" : "";
        return new Refusal(
                "line " + at.getLineNr() + ", column " + at.getColumnNr() + " is not JSON" + quoted(before) + hint
                        + ".",
                e);
    }

    private static String quoted(String text) {
        String line = text.substring(Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r')) + 1);
        String shown = Quote.of(line).strip();
        return shown.isEmpty() ? "" : ", at the end of \"" + shown + "\"";
    }
}
