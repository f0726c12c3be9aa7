package rakeline.desk;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/**
 * The code that the user has let run. It goes by what the snippets say, not by the file's name or place: code that
 * someone else has changed is other code, and is not trusted.
 *
 * @param code stamps of all snippets of a page, the latest first, at most {@value #MOST}, none twice
 */
public record Trust(List<Stamp> code) {
    public static final int MOST = 1000;

    public Trust {
        code = code.stream().distinct().limit(MOST).toList();
    }

    public static Trust none() {
        return new Trust(List.of());
    }

    /** True where this page's code was let run; also where it has none. */
    public boolean isIn(Worksheet page) {
        return code(page).isEmpty() || code.contains(stamp(page));
    }

    /** With this page's code. */
    public Trust with(Worksheet page) {
        return new Trust(Stream.concat(Stream.of(stamp(page)), code.stream()).toList());
    }

    private static Stamp stamp(Worksheet page) {
        return Stamp.of(code(page).getBytes(StandardCharsets.UTF_8));
    }

    /** Each snippet after its length, so that no two pages read alike. */
    private static String code(Worksheet page) {
        return page.rows().stream()
                .filter(Row.Snippet.class::isInstance)
                .map(row -> row.text().length() + ":" + row.text())
                .collect(Collectors.joining());
    }
}
