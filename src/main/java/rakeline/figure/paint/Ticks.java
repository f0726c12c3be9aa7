package rakeline.figure.paint;

import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;
import rakeline.quantity.Decimals;
import rakeline.quantity.Range;
import rakeline.quantity.Unit;

/** The few round numbers of an axis: 1, 2 or 5 times a power of ten apart. */
record Ticks(double step, long first, long last) {
    private static final double LONGEST_PLAIN = 1e7;

    /**
     * The ticks inside a range.
     *
     * @param most how many there is room for, at least 1
     * @param least the least distance between two
     */
    static Ticks in(Range range, int most, double least) {
        double step = roundedUp(Math.max((range.to() - range.from()) / Math.max(1, most), least));
        double slack = 1e-9;
        return new Ticks(
                step, (long) Math.ceil(range.from() / step - slack), (long) Math.floor(range.to() / step + slack));
    }

    /** The same, closer where there would be a single one. */
    static Ticks atLeastTwo(Range range, int most, double least) {
        Ticks ticks = in(range, most, least);
        for (int more = most + 1; ticks.last - ticks.first < 1 && more < 4 * most; more++) {
            ticks = in(range, more, least);
        }
        return ticks;
    }

    List<String> texts(Unit unit) {
        return values().stream().map(value -> text(value, unit)).toList();
    }

    List<Double> values() {
        return LongStream.rangeClosed(first, Math.min(last, first + 1000))
                .mapToObj(this::value)
                .toList();
    }

    /** A tick as it is written: with the degree sign where it is one, else the number alone. */
    String text(double value, Unit unit) {
        String number = Math.max(Math.abs(value), step) < LONGEST_PLAIN && step > 1e-9
                ? Decimals.fixed(value, decimals())
                : Decimals.signed(String.format(Locale.ROOT, "%.2e", value));
        return unit == Unit.DEGREE ? unit.attach(number) : number;
    }

    private double value(long index) {
        double power = Math.pow(10, exponent());
        long multiple = Math.round(step / power);
        return exponent() < 0 ? index * multiple / Math.pow(10, -exponent()) : index * multiple * power;
    }

    private int exponent() {
        return (int) Math.floor(Math.log10(step) + 1e-9);
    }

    private int decimals() {
        return Math.max(0, -exponent());
    }

    private static double roundedUp(double rough) {
        double power = Math.pow(10, Math.floor(Math.log10(rough) + 1e-9));
        double lead = rough / power;
        return power * (lead <= 1 + 1e-9 ? 1 : lead <= 2 + 1e-9 ? 2 : lead <= 5 + 1e-9 ? 5 : 10);
    }
}
