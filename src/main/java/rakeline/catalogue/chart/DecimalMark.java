package rakeline.catalogue.chart;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The decimal mark of a chart: point or comma, whichever most of its numbers use. */
enum DecimalMark {
    POINT('.'),
    COMMA(',');

    private static final Pattern NUMBER = Pattern.compile(
            "([-+−–]?(?:\\d{1,12}(?:[.,]\\d{0,340})?|[.,]\\d{1,340}))\\s*(" + ChartUnit.pattern() + ")?");
    private static final Pattern GROUPED = Pattern.compile("[-+]?\\d{1,3}[.,]\\d{3}");

    private final char mark;

    DecimalMark(char mark) {
        this.mark = mark;
    }

    /** A number with the unit behind it. */
    record Figure(String digits, String unit) {
        static Optional<Figure> of(String text) {
            Matcher matcher = NUMBER.matcher(
                    text.replace('\u00A0', ' ').replace('\u202F', ' ').strip());
            return matcher.matches()
                    ? Optional.of(new Figure(
                            matcher.group(1).replace('−', '-').replace('–', '-'),
                            matcher.group(2) == null ? "" : matcher.group(2)))
                    : Optional.empty();
        }
    }

    /** The mark that most of a chart's numbers use; one that may part thousands counts only where no other has a mark. */
    static DecimalMark of(List<Cell> cells) {
        List<String> digits = cells.stream()
                .map(cell -> Figure.of(cell.text()))
                .flatMap(Optional::stream)
                .map(Figure::digits)
                .toList();
        List<String> certain =
                digits.stream().filter(text -> !mayBeThousands(text)).toList();
        boolean marked = uses(certain, '.') + uses(certain, ',') > 0;
        return mostUse(marked ? certain : digits);
    }

    private static DecimalMark mostUse(List<String> digits) {
        return uses(digits, ',') > uses(digits, '.') ? COMMA : POINT;
    }

    private static long uses(List<String> digits, char mark) {
        return digits.stream().filter(text -> text.indexOf(mark) >= 0).count();
    }

    /** The number of digits with this mark; empty where they use the other one. */
    Optional<BigDecimal> read(String digits) {
        boolean other = digits.indexOf(this == POINT ? ',' : '.') >= 0;
        return other ? Optional.empty() : Optional.of(new BigDecimal(digits.replace(mark, '.')));
    }

    /** Whether the mark may part thousands instead: 1,012. */
    static boolean mayBeThousands(String digits) {
        return GROUPED.matcher(digits).matches();
    }

    String word() {
        return this == POINT ? "the decimal point" : "the decimal comma";
    }
}
