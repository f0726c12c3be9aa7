package rakeline.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text with a decimal point, whatever the locale. */
public final class Decimals {
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

    /** Rounded half away from zero to a number of decimals; never {@code -0.0}; a dash where there is no number. */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return "–";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }
}
