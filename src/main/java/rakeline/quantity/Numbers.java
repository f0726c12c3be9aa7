package rakeline.quantity;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;

/** A column of numbers that never changes; NaN is a gap. */
public final class Numbers {
    private static final Numbers NONE = new Numbers(new double[0]);

    private final double[] values;

    private Numbers(double[] values) {
        this.values = values;
    }

    public static Numbers of(double... values) {
        return values.length == 0 ? NONE : new Numbers(values.clone());
    }

    /** The values of a function at 0, 1, …, size − 1. */
    public static Numbers generate(int size, IntToDoubleFunction value) {
        double[] values = new double[size];
        Arrays.setAll(values, value);
        return new Numbers(values);
    }

    public static Numbers none() {
        return NONE;
    }

    public int size() {
        return values.length;
    }

    public double at(int index) {
        return values[index];
    }

    public DoubleStream stream() {
        return Arrays.stream(values);
    }

    public Numbers map(DoubleUnaryOperator each) {
        return generate(size(), i -> each.applyAsDouble(values[i]));
    }

    /** A copy that the caller may change. */
    public double[] toArray() {
        return values.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Numbers numbers && Arrays.equals(values, numbers.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    /** The count alone: a large column is never turned into one string. */
    @Override
    public String toString() {
        return values.length + " numbers";
    }
}
