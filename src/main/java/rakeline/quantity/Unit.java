package rakeline.quantity;

/** A unit as it is written beside a number; the keys of files and commands end in {@link #keySuffix()}. */
public enum Unit {
    MILLIMETRE("mm", "Mm"),
    METRE("m", "M"),
    DEGREE("°", "Deg"),
    PERCENT("%", "Percent"),
    KILOMETRE_PER_HOUR("km/h", "Kmh"),
    PER_SQUARE_METRE("1/m²", "PerM2"),
    MILLIMETRE_PER_DEGREE("mm/°", "Mm"),
    KILOGRAM("kg", "Kg");

    private final String symbol;
    private final String keySuffix;

    Unit(String symbol, String keySuffix) {
        this.symbol = symbol;
        this.keySuffix = keySuffix;
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
