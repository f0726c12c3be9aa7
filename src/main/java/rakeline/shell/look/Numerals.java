package rakeline.shell.look;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import rakeline.quantity.Decimals;

/** Numbers as a person reads and types them: shown with the locale's decimal sign, taken with a point or a comma. */
public final class Numerals {
    private static final Pattern NUMBER = Pattern.compile("[-−+]?\\d{1,15}([.,]\\d{0,15})?|[-−+]?[.,]\\d{1,15}");

    private Numerals() {}

    /** With a number of decimals, or with more where the value has more. */
    public static String show(double value, int decimals) {
        String fixed = Decimals.fixed(value, decimals);
        boolean exact = Double.isNaN(value) || Double.parseDouble(Decimals.typed(fixed)) == value;
        return local(exact ? fixed : Decimals.shortest(value));
    }

    /** As short as it can be. */
    public static String show(double value) {
        return local(Decimals.shortest(value));
    }

    /** The number that was typed, or none where it is not a number. */
    public static OptionalDouble read(String typed) {
        String trimmed = typed.strip();
        if (!NUMBER.matcher(trimmed).matches()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(trimmed.replace(',', '.').replace('−', '-')));
    }

    /** Degrees are written without a blank, all other units with one. */
    public static String withUnit(String number, String unit) {
        if (unit.isEmpty()) {
            return number;
        }
        return unit.equals("°") ? number + unit : number + " " + unit;
    }

    private static String local(String number) {
        char sign = DecimalFormatSymbols.getInstance(Locale.getDefault(Locale.Category.FORMAT))
                .getDecimalSeparator();
        return Decimals.signed(number).replace('.', sign);
    }
}
