package rakeline.worksheet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import rakeline.json.Piece;
import rakeline.worksheet.Row.Note;
import rakeline.worksheet.Row.Snippet;

/** From a worksheet to JSON that is pleasant to read and to compare: one order of keys, one line of text on a line. */
final class WorksheetWriter {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final DefaultIndenter TWO_BLANKS = new DefaultIndenter("  ", "\n");
    private static final Pattern LINE_END = Pattern.compile("\n");
    private static final Pattern HALF_CHARACTER = Pattern.compile("[\\ud800-\\udfff]");
    private static final double PLAIN = 1e15;

    private final JsonGenerator json;

    private WorksheetWriter(JsonGenerator json) {
        this.json = json;
    }

    static String write(Worksheet page) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.setPrettyPrinter(layout());
            new WorksheetWriter(json).page(page);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be written", e);
        }
        return escaped(text.append('\n').toString());
    }

    private static DefaultPrettyPrinter layout() {
        Separators separators = Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withArrayEmptySeparator("")
                .withObjectEmptySeparator("");
        DefaultPrettyPrinter layout = new DefaultPrettyPrinter(separators);
        layout.indentArraysWith(TWO_BLANKS);
        layout.indentObjectsWith(TWO_BLANKS);
        return layout;
    }

    /** Half a surrogate pair has no UTF-8; written as an escape it is read back as it was. */
    private static String escaped(String text) {
        return HALF_CHARACTER
                .matcher(text)
                .replaceAll(half -> String.format(
                        Locale.ROOT, "\\\\u%04x", (int) half.group().charAt(0)));
    }

    private void page(Worksheet page) throws IOException {
        json.writeStartObject();
        json.writeStringField("format", WorksheetFile.FORMAT);
        json.writeNumberField("version", WorksheetFile.VERSION);
        json.writeStringField("title", page.title());
        head(page);
        json.writeArrayFieldStart("rows");
        for (Row row : page.rows()) {
            row(row);
        }
        json.writeEndArray();
        dials(page.dials());
        picks(page.picks());
        json.writeEndObject();
    }

    private void head(Worksheet page) throws IOException {
        if (!page.about().isEmpty()) {
            json.writeStringField("about", page.about());
        }
        if (page.audience().isPresent()) {
            json.writeStringField("for", Piece.word(page.audience().get()));
        }
        strings("answers", page.answers());
        json.writeStringField("view", Piece.word(page.view()));
        strings("rack", page.rack());
    }

    private void strings(String key, List<String> items) throws IOException {
        if (!items.isEmpty()) {
            list(key, items);
        }
    }

    private void list(String key, List<String> items) throws IOException {
        json.writeArrayFieldStart(key);
        for (String item : items) {
            json.writeString(item);
        }
        json.writeEndArray();
    }

    private void row(Row row) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", row.id());
        list(row instanceof Note ? "note" : "snippet", lines(row.text()));
        if (row instanceof Snippet snippet && snippet.waits()) {
            json.writeBooleanField("wait", true);
        }
        if (row.folded()) {
            json.writeBooleanField("fold", true);
        }
        if (row instanceof Snippet snippet && snippet.timeLimitSeconds().isPresent()) {
            json.writeNumberField("timeLimitSeconds", snippet.timeLimitSeconds().getAsInt());
        }
        json.writeEndObject();
    }

    private static List<String> lines(String text) {
        return text.isEmpty() ? List.of() : List.of(LINE_END.split(text, -1));
    }

    private void dials(Map<String, Double> dials) throws IOException {
        if (!dials.isEmpty()) {
            json.writeObjectFieldStart("dials");
            for (Map.Entry<String, Double> dial : dials.entrySet()) {
                json.writeFieldName(dial.getKey());
                number(dial.getValue());
            }
            json.writeEndObject();
        }
    }

    /** A whole number without a needless {@code .0}; every other as Java writes it. */
    private void number(double value) throws IOException {
        if (Double.compare(Math.rint(value) + 0.0, value) == 0 && Math.abs(value) < PLAIN) {
            json.writeNumber((long) value);
        } else {
            json.writeNumber(value);
        }
    }

    private void picks(Map<String, String> picks) throws IOException {
        if (!picks.isEmpty()) {
            json.writeObjectFieldStart("picks");
            for (Map.Entry<String, String> pick : picks.entrySet()) {
                json.writeStringField(pick.getKey(), pick.getValue());
            }
            json.writeEndObject();
        }
    }
}
