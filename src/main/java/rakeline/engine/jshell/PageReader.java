package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import rakeline.engine.Layout;
import rakeline.engine.PageRow;
import rakeline.engine.RowSource;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** Reads pages; a row whose text it has seen in the page before is not read again. */
final class PageReader {
    private final Function<String, RowSource> reader;
    private Map<String, RowSource> known = Map.of();

    PageReader(Function<String, RowSource> reader) {
        this.reader = reader;
    }

    Layout read(Worksheet worksheet) {
        Map<String, RowSource> sources = new HashMap<>();
        List<PageRow> rows = new ArrayList<>();
        for (int i = 0; i < worksheet.rows().size(); i++) {
            if (worksheet.rows().get(i) instanceof Row.Snippet snippet) {
                RowSource source = sources.computeIfAbsent(snippet.text(), this::source);
                rows.add(new PageRow(i + 1, snippet, source));
            }
        }
        known = sources;
        return Layout.of(rows);
    }

    private RowSource source(String text) {
        RowSource before = known.get(text);
        return before == null ? reader.apply(text) : before;
    }
}
