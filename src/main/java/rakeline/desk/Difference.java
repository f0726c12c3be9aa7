package rakeline.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import rakeline.json.Piece;
import rakeline.quantity.Decimals;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/**
 * One thing in which two versions of a page differ.
 *
 * @param words as in {@code Row 3 was changed}
 * @param before how it stands in the one, empty where it is not there
 * @param after how it stands in the other, empty where it is not there
 */
public record Difference(String words, String before, String after) {
    /** All, in the order of the page: its head, its rows, its dials, its picks. */
    public static List<Difference> between(Worksheet before, Worksheet after) {
        List<Difference> all = new ArrayList<>();
        head(before, after, all);
        after.rows().forEach(row -> row(before, after, row, all));
        before.rows().stream()
                .filter(row -> after.row(row.id()).isEmpty())
                .forEach(row -> all.add(new Difference("Row " + place(before, row) + " was removed", row.text(), "")));
        order(before, after, all);
        values("The dial ", shown(before.dials()), shown(after.dials()), all);
        values("The pick ", before.picks(), after.picks(), all);
        return List.copyOf(all);
    }

    private static void head(Worksheet before, Worksheet after, List<Difference> all) {
        differ("The title was changed", before.title(), after.title(), all);
        differ("What the page is about was changed", before.about(), after.about(), all);
        differ("For whom it is was changed", audience(before), audience(after), all);
        differ("The questions it answers were changed", lines(before.answers()), lines(after.answers()), all);
        differ("The rack was changed", lines(before.rack()), lines(after.rack()), all);
    }

    private static void differ(String words, String before, String after, List<Difference> all) {
        if (!before.equals(after)) {
            all.add(new Difference(words, before, after));
        }
    }

    private static String audience(Worksheet page) {
        return page.audience().map(Piece::word).orElse("");
    }

    private static String lines(List<String> items) {
        return String.join("\n", items);
    }

    private static void row(Worksheet before, Worksheet after, Row row, List<Difference> all) {
        String here = "Row " + place(after, row);
        before.row(row.id())
                .ifPresentOrElse(
                        former -> changed(here, former, row, all),
                        () -> all.add(new Difference(here + " was added", "", row.text())));
    }

    private static void changed(String here, Row before, Row after, List<Difference> all) {
        differ(here + " was changed", before.text(), after.text(), all);
        differ("How " + here.toLowerCase(Locale.ROOT) + " runs was changed", way(before), way(after), all);
    }

    private static String way(Row row) {
        if (!(row instanceof Row.Snippet snippet)) {
            return "a note";
        }
        return (snippet.waits() ? "waits until it is asked" : "runs by itself")
                + (snippet.folded() ? ", shown as one line" : "")
                + (snippet.timeLimitSeconds().isPresent()
                        ? ", at most " + snippet.timeLimitSeconds().getAsInt() + " s"
                        : "");
    }

    private static int place(Worksheet page, Row row) {
        return page.indexOf(row.id()) + 1;
    }

    private static void order(Worksheet before, Worksheet after, List<Difference> all) {
        List<String> common = ids(after).stream().filter(ids(before)::contains).toList();
        List<String> former = ids(before).stream().filter(common::contains).toList();
        if (!former.equals(common)) {
            all.add(new Difference("Rows were moved", places(before, former), places(before, common)));
        }
    }

    private static List<String> ids(Worksheet page) {
        return page.rows().stream().map(Row::id).toList();
    }

    private static String places(Worksheet page, List<String> ids) {
        return "rows "
                + String.join(
                        ", ",
                        ids.stream()
                                .map(id -> String.valueOf(page.indexOf(id) + 1))
                                .toList());
    }

    private static Map<String, String> shown(Map<String, Double> dials) {
        Map<String, String> shown = new LinkedHashMap<>();
        dials.forEach((name, value) -> shown.put(name, Decimals.shown(value)));
        return shown;
    }

    private static void values(
            String what, Map<String, String> before, Map<String, String> after, List<Difference> all) {
        Set<String> names = new LinkedHashSet<>(after.keySet());
        names.addAll(before.keySet());
        for (String name : names) {
            if (!Objects.equals(before.get(name), after.get(name))) {
                all.add(new Difference(
                        what + name + " was moved", before.getOrDefault(name, ""), after.getOrDefault(name, "")));
            }
        }
    }
}
