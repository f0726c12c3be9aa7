package rakeline.quantity;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A number that a file may give.
 *
 * @param slot the place of its value in an {@link Entries}
 */
public record Input(Quantity quantity, Presence presence, int slot) implements Keyed {
    /** Whether a group that is given must hold the key. */
    public sealed interface Presence {
        /** The group is not complete without it. */
        record Required() implements Presence {}

        /** May be left out; then there is no value. */
        record Optional() implements Presence {}

        /** May be left out; then this value is taken. */
        record Defaulted(double value) implements Presence {}

        /** May be left out; then it follows from others, which {@code from} names. */
        record Derived(String from, ToDoubleFunction<Entries> formula) implements Presence {}
    }

    public static Presence required() {
        return new Presence.Required();
    }

    public static Presence optional() {
        return new Presence.Optional();
    }

    public static Presence byDefault(double value) {
        return new Presence.Defaulted(value);
    }

    public static Presence derived(String from, ToDoubleFunction<Entries> formula) {
        return new Presence.Derived(from, formula);
    }

    /** The refusal of something that is not whole: all that is missing in words, with its keys and what is accepted. */
    public static Refusal notWhole(String name, List<Input> missing) {
        List<String> each = missing.stream()
                .map(Input::quantity)
                .map(quantity -> quantity.inSentence() + " (" + quantity.key() + ", " + quantity.acceptedWords() + ")")
                .toList();
        return new Refusal(name + " is not whole; missing: " + Sentences.list(each) + ".");
    }

    @Override
    public String key() {
        return quantity.key();
    }

    /** The key up to its last dot: {@code cockpit.bar} of {@code cockpit.bar.widthMm}; empty for a key without one. */
    public String group() {
        return key().substring(0, Math.max(0, key().lastIndexOf('.')));
    }

    /** The key after its last dot. */
    public String name() {
        return key().substring(key().lastIndexOf('.') + 1);
    }

    /** The value taken when none is given: NaN where there is none. */
    double fallback(Entries others) {
        if (presence instanceof Presence.Defaulted defaulted) {
            return defaulted.value();
        }
        return presence instanceof Presence.Derived derived ? derived.formula().applyAsDouble(others) : Double.NaN;
    }

    /** Inputs are the same when they have the same key and place. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Input input && slot == input.slot && key().equals(input.key());
    }

    @Override
    public int hashCode() {
        return slot;
    }

    @Override
    public String toString() {
        return key();
    }
}
