package rakeline.shell.rack;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rakeline.catalogue.chart.WheelName;
import rakeline.json.Quote;
import rakeline.quantity.Refusal;

/**
 * A number as typed in a cell, with a decimal point or comma; it may bring its unit ({@code 20 in}) and a standard
 * uncertainty ({@code 544 ± 3}).
 *
 * @param value as stored: millimetres for a length
 * @param uncertaintyOrNaN in the same unit; NaN where none is typed
 */
record Typed(double value, double uncertaintyOrNaN) {
    private static final String NUMBER = "([-+−–]?(?:\\d{1,12}(?:[.,]\\d{0,12})?|[.,]\\d{1,12}))";
    private static final String BEAD_SEAT = ".beadSeatMm";
    private static final String WORD = "\\s*([^\\d\\s±+.,−-]{0,8})\\s*";
    private static final Pattern FORM =
            Pattern.compile("\\s*" + NUMBER + WORD + "(?:(?:±|\\+-|\\+/-)\\s*" + NUMBER + WORD + ")?");

    /**
     * Reads a cell; empty where it was cleared.
     *
     * @param lengths the unit of a length that brings none
     * @throws Refusal in one sentence where it is no number of this column, or out of its range
     */
    static Optional<Typed> read(String text, RackColumn column, LengthUnit lengths) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        if (column.key().endsWith(BEAD_SEAT)) {
            Optional<WheelName> wheel = WheelName.of(text.replace(',', '.'));
            if (wheel.isPresent()) {
                return wheel.map(name -> new Typed(name.beadSeatMm(), Double.NaN));
            }
        }
        Matcher form = FORM.matcher(text.replace('\u00A0', ' ').strip());
        if (!form.matches()) {
            throw unlike(text, column, lengths);
        }
        String unit = form.group(2);
        double value = stored(text, form.group(1), unit, column, lengths);
        if (!column.quantity().accepted().contains(value)) {
            throw unlike(text, column, lengths);
        }
        return Optional.of(new Typed(value, uncertainty(text, form, unit, column, lengths)));
    }

    private static double uncertainty(String text, Matcher form, String unit, RackColumn column, LengthUnit lengths) {
        if (form.group(3) == null) {
            return Double.NaN;
        }
        String own = form.group(4).isEmpty() ? unit : form.group(4);
        double u = stored(text, form.group(3), own, column, lengths);
        if (u < 0) {
            throw unlike(text, column, lengths);
        }
        return u;
    }

    private static double stored(String text, String digits, String unit, RackColumn column, LengthUnit lengths) {
        BigDecimal number =
                new BigDecimal(digits.replace(',', '.').replace('−', '-').replace('–', '-'));
        String word = unit.toLowerCase(Locale.ROOT);
        if (column.isLength()) {
            Optional<LengthUnit> given = word.isEmpty() ? Optional.of(lengths) : LengthUnit.of(word);
            return given.orElseThrow(() -> unlike(text, column, lengths)).toMm(number) + 0.0; // no negative zero
        }
        String own = column.quantity().unit().symbol();
        if (!word.isEmpty() && !word.equals(own.toLowerCase(Locale.ROOT)) && !(own.equals("°") && word.equals("deg"))) {
            throw unlike(text, column, lengths);
        }
        return number.doubleValue() + 0.0;
    }

    private static Refusal unlike(String text, RackColumn column, LengthUnit lengths) {
        return new Refusal(column.quantity().label() + " is \"" + Quote.of(text.strip())
                + "\"; accepted is a number from " + column.accepted(lengths) + ".");
    }
}
