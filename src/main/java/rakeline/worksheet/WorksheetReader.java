package rakeline.worksheet;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;
import rakeline.json.Piece;
import rakeline.json.Quote;
import rakeline.quantity.Refusal;
import rakeline.worksheet.Row.Note;
import rakeline.worksheet.Row.Snippet;
import rakeline.worksheet.Worksheet.Audience;
import rakeline.worksheet.Worksheet.View;

/** From JSON to a worksheet, every refusal with its place. */
final class WorksheetReader {
    private static final List<String> PAGE_KEYS =
            List.of("format", "version", "title", "about", "for", "answers", "view", "rack", "rows", "dials", "picks");
    private static final List<String> NOTE_KEYS = List.of("id", "note", "fold");
    private static final List<String> ROW_KEYS = List.of("id", "note", "snippet", "wait", "fold", "timeLimitSeconds");

    private final Piece page;

    private WorksheetReader(Piece page) {
        this.page = page;
    }

    static Worksheet read(Piece page) {
        checkFormat(page);
        checkVersion(page.member("version"));
        page.members("a worksheet", PAGE_KEYS);
        return new WorksheetReader(page).worksheet();
    }

    private static void checkFormat(Piece page) {
        Piece format = page.member("format");
        if (!format.text().equals(WorksheetFile.FORMAT)) {
            throw format.unlike("\"" + WorksheetFile.FORMAT + "\"");
        }
    }

    private static void checkVersion(Piece version) {
        int number = version.whole();
        if (number > WorksheetFile.VERSION) {
            throw version.refusal("is " + number + ": the worksheet was made by a newer Rakeline; this one reads up to "
                    + WorksheetFile.VERSION);
        }
        if (number < 1) {
            throw version.unlike("1.." + WorksheetFile.VERSION);
        }
    }

    private Worksheet worksheet() {
        return new Worksheet(
                page.member("title").text(),
                optional("about", Piece::text).orElse(""),
                optional("for", piece -> piece.oneOf(Audience.values())),
                texts("answers"),
                optional("view", piece -> piece.oneOf(View.values())).orElse(View.WRITE),
                texts("rack"),
                rows(),
                named("dials", Piece::number),
                named("picks", Piece::text));
    }

    private <T> Optional<T> optional(String key, Function<Piece, T> read) {
        return optional(page, key, read);
    }

    private static <T> Optional<T> optional(Piece group, String key, Function<Piece, T> read) {
        return Optional.ofNullable(group.members().get(key)).map(read);
    }

    private List<String> texts(String key) {
        return optional(key, piece -> piece.each(Piece::text)).orElse(List.of());
    }

    private <V> Map<String, V> named(String key, Function<Piece, V> read) {
        Map<String, V> values = new LinkedHashMap<>();
        optional(key, Piece::members).orElse(Map.of()).forEach((name, piece) -> {
            values.put(at(piece, () -> Names.checked(name)), read.apply(piece));
        });
        return values;
    }

    private List<Row> rows() {
        List<Piece> pieces = page.member("rows").items();
        Map<String, Piece> ids = new HashMap<>();
        pieces.stream().map(row -> row.member("id")).forEach(id -> {
            Piece former = ids.putIfAbsent(id.text(), id);
            if (former != null) {
                throw id.refusal("is \"" + Quote.of(id.text()) + "\" like " + former.path() + " (line " + former.line()
                        + "); accepted is an id of its own for each row");
            }
        });
        return pieces.stream().map(WorksheetReader::row).toList();
    }

    private static Row row(Piece piece) {
        Map<String, Piece> members = piece.members("a row", ROW_KEYS);
        if (members.containsKey("note") == members.containsKey("snippet")) {
            throw piece.refusal("has "
                    + (members.containsKey("note") ? "both a note and a snippet" : "neither a note nor a snippet")
                    + "; accepted is one of them");
        }
        return members.containsKey("note") ? note(piece) : snippet(piece);
    }

    private static Note note(Piece piece) {
        piece.members("a note", NOTE_KEYS);
        String id = piece.member("id").text();
        String text = lines(piece.member("note"));
        boolean folded = optional(piece, "fold", Piece::flag).orElse(false);
        return at(piece, () -> new Note(id, text, folded));
    }

    private static Snippet snippet(Piece piece) {
        String id = piece.member("id").text();
        String text = lines(piece.member("snippet"));
        boolean waits = optional(piece, "wait", Piece::flag).orElse(false);
        boolean folded = optional(piece, "fold", Piece::flag).orElse(false);
        Optional<Integer> limit = optional(piece, "timeLimitSeconds", Piece::whole);
        return at(
                piece,
                () -> new Snippet(
                        id, text, waits, folded, limit.map(OptionalInt::of).orElse(OptionalInt.empty())));
    }

    /** Puts the place before what a value itself refuses. */
    private static <T> T at(Piece piece, Supplier<T> make) {
        try {
            return make.get();
        } catch (Refusal refusal) {
            throw refusal.in(piece.place());
        }
    }

    private static String lines(Piece piece) {
        return String.join("\n", piece.each(Piece::oneLine));
    }
}
