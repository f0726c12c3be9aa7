package rakeline.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/**
 * Numbers as text with a decimal point, whatever the locale. What people read has the minus sign; what is read back by
 * programs, in files, on the command line and in CSV, has the hyphen that keyboards type.
 */
public final class Decimals {
    private static final char MINUS = '−';
    private static final Pattern MINUS_OF_A_NUMBER = Pattern.compile("−(?=\\.?\\d)");
    private static final int MOST_DECIMALS = 3;
    private static final int DIGITS = 3;

    private Decimals() {}

    /** The shortest text that reads back as this number, without a needless {@code .0}: {@code 71.3}, {@code 165}. */
    public static String shortest(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        String plain = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        return plain.equals("-0") ? "0" : plain;
    }

    /** The same with no more than so many decimals. */
    public static String shortest(double value, int mostDecimals) {
        return Double.isFinite(value)
                ? shortest(BigDecimal.valueOf(value)
                        .setScale(mostDecimals, RoundingMode.HALF_UP)
                        .doubleValue())
                : shortest(value);
    }

    /**
     * For people: rounded half away from zero to a number of decimals; never {@code −0.0}; a dash where there is no
     * number.
     */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return "–";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : signed(rounded.toPlainString());
    }

    /** For people: every digit that it has. */
    public static String shown(double value) {
        return signed(shortest(value));
    }

    /** For people: no more than so many decimals, none that are needless. */
    public static String shown(double value, int mostDecimals) {
        return signed(shortest(value, mostDecimals));
    }

    /** For people, where nothing says what is measured: three decimals at most, of a small number three digits. */
    public static String brief(double value) {
        if (!Double.isFinite(value) || value == 0) {
            return shown(value);
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal rounded = Math.abs(value) >= 1
                ? exact.setScale(MOST_DECIMALS, RoundingMode.HALF_UP)
                : exact.round(new MathContext(DIGITS, RoundingMode.HALF_UP));
        return shown(rounded.doubleValue());
    }

    /** A number's text as people read it, with the minus sign. */
    public static String signed(String number) {
        return number.replace('-', MINUS);
    }

    /** Words for a terminal or a program: their numbers with the hyphen, so that they can be typed again. */
    public static String typed(String words) {
        return MINUS_OF_A_NUMBER.matcher(words).replaceAll("-");
    }
}
