package rakeline.shell.rack;

import rakeline.geometry.Setting;
import rakeline.quantity.Decimals;
import rakeline.quantity.Quantity;
import rakeline.quantity.Range;
import rakeline.quantity.Unit;
import rakeline.shell.look.Numerals;
import rakeline.study.Vocabulary;

/**
 * A column of the rack.
 *
 * @param isTyped a number of the bike file; else a measure, which is computed
 */
public record RackColumn(Quantity quantity, boolean isTyped) {
    private static final double THOUSANDTHS = 1e3;
    private static final String CHARTED = "charted.";

    /**
     * The column of an input or a measure.
     *
     * @throws rakeline.quantity.Refusal for an unknown key, naming the nearest
     */
    public static RackColumn of(String key) {
        return Setting.keys().contains(key)
                ? new RackColumn(Setting.of(key).quantity(), true)
                : new RackColumn(Vocabulary.standard().quantity(key), false);
    }

    public String key() {
        return quantity.key();
    }

    boolean isLength() {
        return quantity.unit() == Unit.MILLIMETRE;
    }

    /** A number that a maker printed and that follows from others. */
    boolean isCharted() {
        return key().startsWith(CHARTED);
    }

    Setting setting() {
        return Setting.of(key());
    }

    /** The unit in which the column is shown. */
    String unitIn(LengthUnit lengths) {
        return isLength() ? lengths.symbol() : quantity.unit().symbol();
    }

    /** As in {@code Stack, mm}. */
    String heading(LengthUnit lengths) {
        return quantity.label() + ", " + unitIn(lengths);
    }

    /** A number without unit: a typed one with all it has, in millimetres up to thousandths; a measure with its decimals. */
    String show(double value, LengthUnit lengths) {
        if (isLength() && lengths != LengthUnit.MILLIMETRE) {
            int decimals = quantity.decimals();
            return isTyped ? lengths.brief(value, decimals) : lengths.show(value, decimals);
        }
        return isTyped
                ? Numerals.show(Math.rint(value * THOUSANDTHS) / THOUSANDTHS)
                : Numerals.show(Double.parseDouble(Decimals.typed(quantity.format(value))), quantity.decimals());
    }

    String withUnit(double value, LengthUnit lengths) {
        return Numerals.withUnit(show(value, lengths), unitIn(lengths));
    }

    /** What is accepted, as in {@code 200 to 800 mm}. */
    String accepted(LengthUnit lengths) {
        Range range = quantity.accepted();
        return show(range.from(), lengths) + " to " + withUnit(range.to(), lengths);
    }
}
