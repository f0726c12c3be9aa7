package rakeline.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Values of inputs, as given; an input that was not given has none. Never changes. */
public final class Entries {
    private static final Entries NONE = new Entries(new double[0]);

    private final double[] bySlot;

    private Entries(double[] bySlot) {
        this.bySlot = bySlot;
    }

    public static Entries none() {
        return NONE;
    }

    public boolean has(Input input) {
        return !Double.isNaN(get(input));
    }

    /** The given value, or NaN. */
    public double get(Input input) {
        return input.slot() < bySlot.length ? bySlot[input.slot()] : Double.NaN;
    }

    public Entries with(Input input, double value) {
        return with(Map.of(input, value));
    }

    /** These entries with others put in their place; NaN takes one away. */
    public Entries with(Map<Input, Double> changes) {
        int size = changes.keySet().stream().mapToInt(input -> input.slot() + 1).reduce(bySlot.length, Math::max);
        double[] changed = Arrays.copyOf(bySlot, size);
        Arrays.fill(changed, bySlot.length, size, Double.NaN);
        changes.forEach((input, value) -> changed[input.slot()] = value);
        return new Entries(changed);
    }

    /** These entries, completed by the fallbacks of the inputs that apply. */
    public Entries completed(List<Input> inputs, Predicate<Input> applies) {
        int size = inputs.stream().mapToInt(input -> input.slot() + 1).reduce(bySlot.length, Math::max);
        double[] complete = Arrays.copyOf(bySlot, size);
        Arrays.fill(complete, bySlot.length, size, Double.NaN);
        for (Input input : inputs) {
            if (Double.isNaN(complete[input.slot()]) && applies.test(input)) {
                complete[input.slot()] = input.fallback(this);
            }
        }
        return new Entries(complete);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Entries entries && Arrays.equals(trimmed(), entries.trimmed());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(trimmed());
    }

    private double[] trimmed() {
        int size = bySlot.length;
        while (size > 0 && Double.isNaN(bySlot[size - 1])) {
            size--;
        }
        return Arrays.copyOf(bySlot, size);
    }
}
