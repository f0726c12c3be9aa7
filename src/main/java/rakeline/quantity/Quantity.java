package rakeline.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * One declaration of an input or a measure; everything that names, prints, draws, completes or refuses it reads this.
 *
 * @param key as in files and commands, unit at its end: {@code frame.headAngleDeg}, {@code trailMm}
 * @param label as on an axis or in a table, without unit
 * @param symbol as in formulas, or empty
 * @param accepted the accepted range of an input; {@link Range#ANY} for a measure
 * @param decimals shown; they follow the uncertainty
 * @param uncertaintyOrNaN default standard uncertainty, in the unit; NaN where none is known
 * @param definition one sentence
 * @param caution what stands next to the number where it can hurt someone, or empty
 * @param limits lines drawn beside it, each with its source
 * @param source of the definition, or empty where the definition is our own
 */
public record Quantity(
        String key,
        String label,
        String symbol,
        Unit unit,
        Range accepted,
        int decimals,
        double uncertaintyOrNaN,
        String definition,
        String caution,
        List<Limit> limits,
        String source) {

    public Quantity {
        limits = List.copyOf(limits);
        if (!key.endsWith(unit.keySuffix()) && !key.contains("Per")) {
            throw new Refusal(key + " does not end in its unit, " + unit.keySuffix());
        }
    }

    /** Starts a declaration. */
    public static Draft of(String key, String label, Unit unit, String definition) {
        return new Draft(key, label, unit, definition);
    }

    /** The same quantity under another key and label. */
    public Quantity named(String newKey, String newLabel) {
        return new Quantity(
                newKey,
                newLabel,
                symbol,
                unit,
                accepted,
                decimals,
                uncertaintyOrNaN,
                definition,
                caution,
                limits,
                source);
    }

    /** The number alone, with this quantity's decimals; a dash for NaN. */
    public String format(double value) {
        return Decimals.fixed(value, decimals);
    }

    /** The number with its unit. */
    public String formatWithUnit(double value) {
        return unit.attach(format(value));
    }

    /** Label and unit, as a table heading: {@code Trail, mm}. */
    public String heading() {
        return label + ", " + unit.symbol();
    }

    /**
     * Returns the value, or refuses one that is not accepted.
     *
     * @throws Refusal naming key, value and accepted range
     */
    public double check(double value) {
        if (!accepted.contains(value)) {
            throw new Refusal(
                    key + " is " + Decimals.shortest(value) + "; accepted is " + accepted + " " + unit.symbol() + ".");
        }
        return value;
    }

    /** A declaration being written down; what is not said keeps its usual value. */
    public static final class Draft {
        private final String key;
        private final String label;
        private final Unit unit;
        private final String definition;
        private final List<Limit> limits = new ArrayList<>();
        private String symbol = "";
        private Range accepted = Range.ANY;
        private int decimals = 1;
        private double uncertainty = Double.NaN;
        private String caution = "";
        private String source = "";

        private Draft(String key, String label, Unit unit, String definition) {
            this.key = key;
            this.label = label;
            this.unit = unit;
            this.definition = definition;
        }

        public Draft symbol(String value) {
            symbol = value;
            return this;
        }

        public Draft within(double from, double to) {
            accepted = new Range(from, to);
            return this;
        }

        public Draft decimals(int value) {
            decimals = value;
            return this;
        }

        /** The default standard uncertainty, in the unit. */
        public Draft uncertainty(double standardUncertainty) {
            uncertainty = standardUncertainty;
            return this;
        }

        public Draft caution(String value) {
            caution = value;
            return this;
        }

        public Draft limit(double value, String limitLabel, String limitSource) {
            limits.add(new Limit(value, limitLabel, limitSource));
            return this;
        }

        public Draft source(String value) {
            source = value;
            return this;
        }

        public Quantity declared() {
            return new Quantity(
                    key, label, symbol, unit, accepted, decimals, uncertainty, definition, caution, limits, source);
        }
    }
}
