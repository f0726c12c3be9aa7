package rakeline.study;

import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;

/** The values that a swept input takes: from + i · step by multiplication, the other end always last. */
public final class Steps {
    /** How many values a sweep without a step takes. */
    public static final int USUAL = 201;

    private static final int MOST = 100_000;

    private Steps() {}

    /** 201 values, ends included. */
    public static Numbers of(double from, double to) {
        return evenly(from, to, USUAL);
    }

    /** So many values, ends included. */
    static Numbers evenly(double from, double to, int count) {
        checkEnds(from, to);
        int last = count - 1;
        return Numbers.generate(count, i -> i == last ? to : from + i * (to - from) / last);
    }

    /**
     * Values a step apart, both ends included; downward where {@code to} lies below {@code from}.
     *
     * @throws Refusal for a step that is not above 0, equal ends, or more than 100,000 values
     */
    public static Numbers of(double from, double to, double step) {
        checkEnds(from, to);
        if (!(step > 0) || Double.isInfinite(step)) {
            throw new Refusal("the step is " + Decimals.shortest(step) + "; accepted is a number above 0.");
        }
        double count = Math.abs(to - from) / step;
        if (count > MOST) {
            throw new Refusal("the step " + Decimals.shortest(step) + " gives more than 100,000 values from "
                    + Decimals.shortest(from) + " to " + Decimals.shortest(to) + "; accepted is a wider one.");
        }
        int last = (int) Math.ceil(count - 1e-9);
        double signed = Math.copySign(step, to - from);
        return Numbers.generate(last + 1, i -> i == last ? to : from + i * signed);
    }

    static void checkEnds(double from, double to) {
        if (!Double.isFinite(from) || !Double.isFinite(to) || from == to) {
            throw new Refusal("the range from " + Decimals.shortest(from) + " to " + Decimals.shortest(to)
                    + " goes nowhere; accepted are two different numbers.");
        }
    }
}
