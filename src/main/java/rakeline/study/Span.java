package rakeline.study;

import rakeline.geometry.Setting;
import rakeline.quantity.Decimals;
import rakeline.quantity.Range;

/**
 * A number and the range in which it is looked for.
 *
 * @param from the lower end, in the number's unit
 * @param to the upper end
 */
public record Span(Varied varied, double from, double to) {
    /** A range given either way round. */
    public Span {
        Steps.checkEnds(from, to);
        varied.setting().quantity().check(from);
        varied.setting().quantity().check(to);
        double low = Math.min(from, to);
        to = Math.max(from, to);
        from = low;
    }

    /** Everything that is accepted for a number. */
    public static Span of(Varied varied) {
        Range accepted = varied.setting().quantity().accepted();
        return new Span(varied, accepted.from(), accepted.to());
    }

    public Setting setting() {
        return varied.setting();
    }

    public String key() {
        return varied.key();
    }

    double width() {
        return to - from;
    }

    /** As in {@code head angle 69 to 74°}. */
    String words() {
        return Wording.range(setting().quantity(), from, to);
    }

    /** As in {@code 69..74}. */
    @Override
    public String toString() {
        return Decimals.shortest(from) + ".." + Decimals.shortest(to);
    }
}
