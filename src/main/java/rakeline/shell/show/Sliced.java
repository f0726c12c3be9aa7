package rakeline.shell.show;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.figure.Chart;
import rakeline.figure.Column;
import rakeline.figure.Drawing;
import rakeline.figure.Figure;
import rakeline.figure.MapFigure;
import rakeline.figure.Table;
import rakeline.quantity.Numbers;

/** Parts of figures. */
final class Sliced {
    /** In letters; longer ones are sentences. */
    private static final int LONGEST_LABEL = 24;

    private Sliced() {}

    /** The figure without the words beneath it, which stand elsewhere. */
    static Figure bare(Figure figure) {
        if (figure instanceof Chart chart) {
            return panels(chart, 0, chart.panels().size());
        }
        if (figure instanceof Table table) {
            return new Table(table.title(), table.columns(), "", List.of());
        }
        if (figure instanceof Drawing drawing) {
            return with(drawing, drawing.marks());
        }
        MapFigure map = (MapFigure) figure;
        return new MapFigure(
                map.title(), map.x(), map.y(), map.measure(), map.values(), map.here(), map.gaps(), "", List.of());
    }

    /**
     * A drawing with the dimensions of what a figure shows alone.
     *
     * @param orAll whether it has all where it has none of them
     */
    static Drawing about(Drawing drawing, Figure figure, boolean orAll) {
        Set<String> named = names(figure);
        List<Drawing.Mark> kept = drawing.marks().stream()
                .filter(mark -> !(mark instanceof Drawing.Dimension dimension)
                        || named.contains(dimension.key())
                        || named.contains(name(dimension)))
                .toList();
        boolean some = kept.stream().anyMatch(Drawing.Dimension.class::isInstance);
        return with(drawing, some || !orAll ? kept : drawing.marks());
    }

    private static Drawing with(Drawing drawing, List<Drawing.Mark> marks) {
        List<Drawing.Mark> drawn =
                marks.stream().filter(mark -> !isSentence(mark)).toList();
        return new Drawing(drawing.kind(), drawing.title(), drawn, drawing.columns(), "", List.of());
    }

    /** What a drawing says in so many words that large letters would stand across it: that is said beneath. */
    static List<String> sentences(Figure figure) {
        return figure instanceof Drawing drawing
                ? drawing.marks().stream()
                        .filter(Sliced::isSentence)
                        .map(mark -> sentence(((Drawing.Label) mark).text()))
                        .toList()
                : List.of();
    }

    private static boolean isSentence(Drawing.Mark mark) {
        return mark instanceof Drawing.Label label && label.text().length() > LONGEST_LABEL;
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    /** The keys of a figure's columns, and the words in those that hold words: a table has its measures there. */
    static Set<String> names(Figure figure) {
        return figure.columns().stream()
                .flatMap(column -> Stream.concat(
                        Stream.of(column.key()),
                        column.values().size() == 0
                                ? column.shown().stream().map(words -> words.toLowerCase(Locale.ROOT))
                                : Stream.empty()))
                .collect(Collectors.toSet());
    }

    /** A dimension's words without its number. */
    private static String name(Drawing.Dimension dimension) {
        return dimension.text().replaceFirst(" [^ ]*$", "").toLowerCase(Locale.ROOT);
    }

    /** Some panels of a chart, by their places from 0. */
    static Chart panels(Chart chart, int from, int to) {
        List<Chart.Panel> kept = chart.panels().subList(from, to);
        Set<String> keys = kept.stream().map(panel -> panel.quantity().key()).collect(Collectors.toSet());
        List<Chart.Gap> gaps =
                chart.gaps().stream().filter(gap -> keys.contains(gap.key())).toList();
        return new Chart(chart.title(), chart.x(), chart.steps(), chart.here(), kept, gaps, "", List.of());
    }

    /** Some rows of a table, by their places from 0. */
    static Table rows(Table table, int from, int to) {
        List<Column> columns =
                table.columns().stream().map(column -> rows(column, from, to)).toList();
        return new Table(table.title(), columns, "", List.of());
    }

    /** A table with a row for each column beside the first, and a column for each row, headed by what the first says. */
    static Table turned(Table table) {
        Column first = table.columns().get(0);
        List<Column> turning = table.columns().subList(1, table.columns().size());
        Stream<Column> labels = Stream.of(words(first.heading(), turning, Column::label));
        Stream<Column> values = IntStream.range(0, table.rows())
                .mapToObj(row -> column(first.shown().get(row), turning, row));
        Stream<Column> units = turning.stream().allMatch(column -> column.unit().isEmpty())
                ? Stream.empty()
                : Stream.of(words("Unit", turning, Column::unit));
        return new Table(
                table.title(),
                Stream.of(labels, values, units).flatMap(each -> each).toList(),
                "",
                List.of());
    }

    /** A figure, turned if a part of it is. */
    static Figure like(Figure part, Figure whole) {
        boolean turned = part instanceof Table some
                && whole instanceof Table all
                && !headings(some).equals(headings(all));
        return turned ? turned((Table) whole) : whole;
    }

    private static List<String> headings(Table table) {
        return table.columns().stream().map(Column::heading).toList();
    }

    private static Column words(String heading, List<Column> turning, Function<Column, String> said) {
        return Column.ofWords("", heading, turning.stream().map(said).toList());
    }

    private static Column column(String heading, List<Column> turning, int row) {
        Numbers values = turning.stream().allMatch(column -> column.values().size() > row)
                ? Numbers.generate(turning.size(), i -> turning.get(i).values().at(row))
                : Numbers.none();
        return new Column(
                "",
                heading,
                "",
                values,
                turning.stream().map(column -> column.shown().get(row)).toList());
    }

    private static Column rows(Column column, int from, int to) {
        Numbers values = column.values().size() == 0
                ? Numbers.none()
                : Numbers.generate(to - from, i -> column.values().at(from + i));
        List<String> shown =
                IntStream.range(from, to).mapToObj(column.shown()::get).toList();
        return new Column(column.key(), column.label(), column.unit(), values, shown);
    }
}
