package rakeline.quantity;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * UTF-8 JSON as a tree, or one sentence that says what is wrong and where. A byte-order mark and any line ends are
 * read; a doubled key, a second value, bytes that are not text and nesting deeper than {@value #DEPTH} are not.
 */
public final class JsonText {
    private static final int DEPTH = 30;
    private static final Pattern COMMA_NUMBER = Pattern.compile("-?\\d+,\\d+(?![\\d\\s]*[\\]\\[])");
    private static final JsonMapper MAPPER = JsonMapper.builder(com.fasterxml.jackson.core.JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEPTH)
                            .build())
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    private JsonText() {}

    /**
     * The tree of a file's bytes.
     *
     * @throws Refusal naming line and column
     */
    public static JsonNode parse(byte[] bytes) {
        String text = decode(bytes);
        try (JsonParser parser = MAPPER.createParser(text)) {
            return whole(parser, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode whole(JsonParser parser, String text) throws IOException {
        try {
            JsonNode tree = MAPPER.readTree(parser);
            if (tree == null || tree.isMissingNode()) {
                throw new Refusal("there is nothing in it; accepted is one JSON object.");
            }
            if (parser.nextToken() != null) {
                throw new Refusal("something follows the JSON object at " + place(parser.currentTokenLocation()) + ".");
            }
            return tree;
        } catch (JsonProcessingException e) {
            throw new Refusal(sentence(e, parser, text), e);
        }
    }

    private static String decode(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            if (text.indexOf('\0') >= 0) {
                throw new Refusal("it holds binary data; accepted is JSON text in UTF-8.");
            }
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new Refusal("it is not UTF-8 text; accepted is JSON in UTF-8.", e);
        }
    }

    private static String sentence(JsonProcessingException e, JsonParser parser, String text) {
        String where = place(e.getLocation()) + under(parser);
        Matcher comma = COMMA_NUMBER.matcher(line(text, e.getLocation()));
        if (comma.find()) {
            return comma.group() + " at " + where + " is written with a comma; accepted is the decimal point, "
                    + comma.group().replace(',', '.') + ".";
        }
        return "it is not well-formed JSON at " + where + ": " + plain(e.getOriginalMessage()) + ".";
    }

    private static String under(JsonParser parser) {
        String pointer = parser.getParsingContext().pathAsPointer().toString();
        return pointer.isEmpty() ? "" : " (" + pointer.substring(1).replace('/', '.') + ")";
    }

    private static String plain(String message) {
        String oneLine = message.replaceAll("\\s+", " ");
        if (oneLine.startsWith("Duplicate")) {
            return "the key " + oneLine.replaceAll(".*'(.*)'.*", "$1") + " is doubled";
        }
        return oneLine.contains("nesting depth") ? "it is nested deeper than " + DEPTH + " levels" : oneLine;
    }

    private static String line(String text, JsonLocation location) {
        if (location == null) {
            return "";
        }
        return text.lines().skip(location.getLineNr() - 1L).findFirst().orElse("");
    }

    private static String place(JsonLocation location) {
        return location == null ? "its end" : "line " + location.getLineNr() + ", column " + location.getColumnNr();
    }
}
