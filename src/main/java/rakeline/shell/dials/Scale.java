package rakeline.shell.dials;

import java.math.BigDecimal;
import java.math.RoundingMode;
import rakeline.engine.Control;

/** The places of a slider: min + n·step, ends included; the last step may be a short one. */
record Scale(BigDecimal min, BigDecimal max, BigDecimal step) {
    static Scale of(Control.Dial dial) {
        return new Scale(
                BigDecimal.valueOf(dial.min()), BigDecimal.valueOf(dial.max()), BigDecimal.valueOf(dial.step()));
    }

    /** The number of the last place; the first is 0. */
    int last() {
        return max.subtract(min).divide(step, 0, RoundingMode.CEILING).intValueExact();
    }

    /** The value at a place, without the noise of binary fractions. */
    double at(int place) {
        return min.add(step.multiply(BigDecimal.valueOf(place))).min(max).doubleValue();
    }

    /** The place nearest to a value. */
    int nearest(double value) {
        BigDecimal steps = BigDecimal.valueOf(value).subtract(min).divide(step, 0, RoundingMode.HALF_UP);
        int place = Math.max(0, Math.min(last(), steps.intValue()));
        boolean shortStepIsNearer = place == last() - 1 && Math.abs(value - at(last())) < Math.abs(value - at(place));
        return shortStepIsNearer ? last() : place;
    }

    /** One step up or down from a value, kept within the range. */
    double stepped(double value, int steps) {
        BigDecimal moved = BigDecimal.valueOf(value).add(step.multiply(BigDecimal.valueOf(steps)));
        return moved.max(min).min(max).doubleValue();
    }

    /** The fraction of the way from min to max. */
    double fraction(double value) {
        return (value - min.doubleValue()) / (max.doubleValue() - min.doubleValue());
    }
}
