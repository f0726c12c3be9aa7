package rakeline.engine;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.figure.Chart;
import rakeline.figure.Column;
import rakeline.figure.Figure;
import rakeline.quantity.Decimals;
import rakeline.quantity.Named;
import rakeline.quantity.Nearest;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;

/** What the rows of a page came to, by the words that a note uses for it: a row's id, or else its name. */
final class RowNumbers {
    static final int AS_SHOWN = -1;

    private static final Pattern PART = Pattern.compile("([^.\\[]+)(?:\\.([^\\[]+?))?(?:\\[([^\\]]*)])?");

    private final Map<String, Outcome> rows;
    private final List<Outcome> outcomes;

    RowNumbers(List<Outcome> outcomes) {
        this.outcomes = List.copyOf(outcomes);
        Stream<Map.Entry<String, Outcome>> ids = outcomes.stream().map(outcome -> Map.entry(outcome.id(), outcome));
        Stream<Map.Entry<String, Outcome>> names = outcomes.stream().map(outcome -> Map.entry(outcome.name(), outcome));
        rows = Stream.concat(ids, names)
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (first, second) -> first));
    }

    /**
     * The words for {@code row}, {@code row.part} or {@code row.part[line]}.
     *
     * @throws Refusal where there is no such thing, as the end of a sentence
     */
    String words(String what, int decimals) {
        Matcher parts = PART.matcher(what);
        if (!parts.matches()) {
            throw new Refusal("is not a row's name, with a part of it after a dot.");
        }
        String part = parts.group(2) == null ? "" : parts.group(2).strip();
        Outcome row = fresh(row(parts.group(1).strip(), part));
        String name = part.isEmpty() ? parts.group(1).strip() : part;
        if (row.numbers().containsKey(name)) {
            return words(name, row.numbers().get(name), decimals);
        }
        Optional<String> line = Optional.ofNullable(parts.group(3)).map(String::strip);
        return part.isEmpty() ? whole(row, decimals) : part(row, part, line, decimals);
    }

    private Outcome row(String name, String part) {
        if (rows.containsKey(name)) {
            return rows.get(name);
        }
        return outcomes.stream()
                .filter(outcome -> part.isEmpty() && outcome.numbers().containsKey(name))
                .findFirst()
                .orElseThrow(() -> new Refusal("names no row of the page" + Nearest.hint(name, rows.keySet())));
    }

    private static Outcome fresh(Outcome row) {
        if (row.state() != State.FRESH) {
            throw new Refusal(
                    "needs row " + row.name() + ", which is " + row.state().words() + ".");
        }
        return row;
    }

    private static String whole(Outcome row, int decimals) {
        Result result =
                row.result().orElseThrow(() -> new Refusal("needs row " + row.name() + ", which shows nothing."));
        if (result instanceof Result.Text text) {
            return text.text();
        }
        if (result instanceof Result.Value value) {
            return Double.isNaN(value.number()) ? value.text() : words(row.name(), value.number(), decimals);
        }
        throw new Refusal("names a figure; say which of its numbers, as " + row.name() + ".trailMm.");
    }

    private static String words(String name, double number, int decimals) {
        return decimals == AS_SHOWN ? new Named(name, number).number() : Decimals.fixed(number, decimals);
    }

    private static String part(Outcome row, String key, Optional<String> line, int decimals) {
        if (!(row.result().orElse(null) instanceof Result.Shown shown)) {
            throw new Refusal("asks row " + row.name() + " for " + key + ", which it does not have.");
        }
        Figure figure = shown.figure();
        List<String> keys = figure.columns().stream().map(Column::key).toList();
        Column column = figure.columns().stream()
                .filter(of -> of.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new Refusal("asks row " + row.name() + " for " + key + ", which it does not have"
                        + Nearest.hint(key, keys)));
        if (figure instanceof Chart chart && line.isEmpty()) {
            return here(chart, column, decimals);
        }
        int place = FigureLine.of(figure, column, line);
        return decimals == AS_SHOWN || !column.isNumeric()
                ? column.shown().get(place)
                : Decimals.fixed(column.values().at(place), decimals);
    }

    private static String here(Chart chart, Column column, int decimals) {
        Numbers values = column.key().equals(chart.x().key())
                ? Numbers.of(chart.here())
                : chart.panels().stream()
                        .filter(panel -> panel.quantity().key().equals(column.key()))
                        .map(panel -> Numbers.of(panel.here()))
                        .findFirst()
                        .orElseThrow();
        if (Double.isNaN(values.at(0))) {
            throw new Refusal("has no value where the chart's line stands; say which, as " + column.key() + "[first].");
        }
        return decimals == AS_SHOWN
                ? Column.of(quantity(chart, column.key()), values).shown().get(0)
                : Decimals.fixed(values.at(0), decimals);
    }

    private static rakeline.quantity.Quantity quantity(Chart chart, String key) {
        return chart.panels().stream()
                .map(Chart.Panel::quantity)
                .filter(quantity -> quantity.key().equals(key))
                .findFirst()
                .orElse(chart.x());
    }
}
