package rakeline.quantity;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/** A unit as it is written beside a number; the keys of files and commands end in {@link #keySuffix()}. */
public enum Unit {
    MILLIMETRE("mm", "Mm", 1),
    METRE("m", "M", 2),
    DEGREE("°", "Deg", 1),
    PERCENT("%", "Percent", 1),
    KILOMETRE_PER_HOUR("km/h", "Kmh", 1),
    PER_SQUARE_METRE("1/m²", "PerM2", 3),
    MILLIMETRE_PER_DEGREE("mm/°", "Mm", 2),
    KILOGRAM("kg", "Kg", 1),
    KILOGRAM_SQUARE_METRE("kg m²", "KgM2", 4),
    METRE_PER_SECOND("m/s", "Mps", 2),
    PER_SECOND("1/s", "PerS", 2),
    RADIAN_PER_SECOND("rad/s", "PerS", 2),
    DEGREE_PER_NEWTON_METRE("°/(N m)", "DegPerNm", 2),
    SECOND("s", "S", 2),
    NEWTON("N", "N", 2),
    NEWTON_METRE("N m", "Nm", 2),
    NEWTON_METRE_PER_RADIAN("N m/rad", "NmPerRad", 2);

    private final String symbol;
    private final String keySuffix;
    private final int decimals;

    Unit(String symbol, String keySuffix, int decimals) {
        this.symbol = symbol;
        this.keySuffix = keySuffix;
        this.decimals = decimals;
    }

    /**
     * The unit that a name of a row ends in, as {@code trailMm} does; none where it ends in no unit, or in so much per
     * unit. A single letter is none: it may as well be a size.
     */
    public static Optional<Unit> of(String name) {
        return Arrays.stream(values())
                .filter(unit -> unit.keySuffix.length() > 1 && unit.ends(name))
                .max(Comparator.comparingInt((Unit unit) -> unit.keySuffix.length())
                        .thenComparing(Comparator.<Unit>naturalOrder().reversed()));
    }

    private boolean ends(String name) {
        int before = name.length() - keySuffix.length() - 1;
        return before >= 0
                && name.endsWith(keySuffix)
                && !Character.isUpperCase(name.charAt(before))
                && !name.substring(0, before + 1).endsWith("Per");
    }

    /** How many decimals its numbers usually have. */
    public int decimals() {
        return decimals;
    }

    public String symbol() {
        return symbol;
    }

    public String keySuffix() {
        return keySuffix;
    }

    /** Degrees, and nothing else, are written without a blank: {@code 71.3°} but {@code 58 mm}. */
    public String attach(String number) {
        return this == DEGREE ? number + symbol : number + " " + symbol;
    }
}
