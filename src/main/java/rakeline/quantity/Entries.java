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
        double[] changed = copyWithRoomFor(changes.keySet());
        changes.forEach((input, value) -> changed[input.slot()] = value);
        return new Entries(changed);
    }

    /** These entries, completed by the fallbacks of the inputs that apply. */
    public Entries completed(List<Input> inputs, Predicate<Input> applies) {
        double[] complete = copyWithRoomFor(inputs);
        for (Input input : inputs) {
            if (Double.isNaN(complete[input.slot()]) && applies.test(input)) {
                complete[input.slot()] = input.fallback(this);
            }
        }
        return new Entries(complete);
    }

    /**
     * These entries, complete already, after a change: changed numbers, and what follows from others anew.
     *
     * @param given the entries given, changes included
     * @param derived every input that may follow from others
     */
    public Entries followed(Entries given, Map<Input, Double> changes, List<Input> derived) {
        double[] complete = bySlot.clone();
        changes.forEach((input, value) -> complete[input.slot()] = value);
        for (Input input : derived) {
            if (has(input) && !given.has(input)) {
                complete[input.slot()] = input.fallback(given);
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

    private double[] copyWithRoomFor(Iterable<Input> inputs) {
        int size = bySlot.length;
        for (Input input : inputs) {
            size = Math.max(size, input.slot() + 1);
        }
        double[] copy = Arrays.copyOf(bySlot, size);
        Arrays.fill(copy, bySlot.length, size, Double.NaN);
        return copy;
    }

    private double[] trimmed() {
        int size = bySlot.length;
        while (size > 0 && Double.isNaN(bySlot[size - 1])) {
            size--;
        }
        return Arrays.copyOf(bySlot, size);
    }
}
