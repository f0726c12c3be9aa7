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

    public static Quantity of(String key, String label, Unit unit, String definition) {
        return new Quantity(key, label, "", unit, Range.ANY, 1, Double.NaN, definition, "", List.of(), "");
    }

    public Quantity symbol(String newSymbol) {
        return new Quantity(
                key, label, newSymbol, unit, accepted, decimals, uncertaintyOrNaN, definition, caution, limits, source);
    }

    public Quantity within(double from, double to) {
        return new Quantity(
                key,
                label,
                symbol,
                unit,
                new Range(from, to),
                decimals,
                uncertaintyOrNaN,
                definition,
                caution,
                limits,
                source);
    }

    public Quantity decimals(int newDecimals) {
        return new Quantity(
                key, label, symbol, unit, accepted, newDecimals, uncertaintyOrNaN, definition, caution, limits, source);
    }

    public Quantity uncertainty(double standardUncertainty) {
        return new Quantity(
                key, label, symbol, unit, accepted, decimals, standardUncertainty, definition, caution, limits, source);
    }

    public Quantity caution(String newCaution) {
        return new Quantity(
                key, label, symbol, unit, accepted, decimals, uncertaintyOrNaN, definition, newCaution, limits, source);
    }

    public Quantity limit(double value, String limitLabel, String limitSource) {
        List<Limit> more = new ArrayList<>(limits);
        more.add(new Limit(value, limitLabel, limitSource));
        return new Quantity(
                key, label, symbol, unit, accepted, decimals, uncertaintyOrNaN, definition, caution, more, source);
    }

    public Quantity source(String newSource) {
        return new Quantity(
                key, label, symbol, unit, accepted, decimals, uncertaintyOrNaN, definition, caution, limits, newSource);
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
}
