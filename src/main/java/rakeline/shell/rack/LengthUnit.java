package rakeline.shell.rack;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Optional;
import rakeline.shell.look.Numerals;

/** A unit that lengths are shown and typed in; what is stored is millimetres, whichever it is. */
public enum LengthUnit {
    MILLIMETRE("mm", "1", 0),
    CENTIMETRE("cm", "10", 1),
    INCH("in", "25.4", 2);

    private final String symbol;
    private final BigDecimal millimetres;
    private final int moreDecimals;

    LengthUnit(String symbol, String millimetres, int moreDecimals) {
        this.symbol = symbol;
        this.millimetres = new BigDecimal(millimetres);
        this.moreDecimals = moreDecimals;
    }

    public String symbol() {
        return symbol;
    }

    /** The unit of a word as people type it. */
    static Optional<LengthUnit> of(String word) {
        String plain = word.equals("\"") || word.equals("″") ? INCH.symbol : word;
        return Arrays.stream(values()).filter(unit -> unit.symbol.equals(plain)).findFirst();
    }

    /** So many of this unit in millimetres, exactly. */
    double toMm(BigDecimal number) {
        return number.multiply(millimetres).doubleValue();
    }

    /**
     * A length as people of this place read it.
     *
     * @param mm in millimetres
     * @param decimals as it has in millimetres
     */
    String show(double mm, int decimals) {
        return Numerals.show(rounded(mm, decimals), decimals + moreDecimals);
    }

    /** The same without needless zeros. */
    String brief(double mm, int decimals) {
        return Numerals.show(rounded(mm, decimals));
    }

    private double rounded(double mm, int decimals) {
        return BigDecimal.valueOf(mm)
                .divide(millimetres, decimals + moreDecimals, RoundingMode.HALF_UP)
                .doubleValue();
    }

    @Override
    public String toString() {
        return symbol;
    }
}
