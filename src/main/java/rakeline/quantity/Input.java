package rakeline.quantity;

/**
 * A number that a file may give.
 *
 * @param slot the place of its value in an {@link Entries}
 */
public record Input(Quantity quantity, Presence presence, int slot) {
    /** Whether a group that is given must hold the key. */
    public sealed interface Presence {
        /** The group is not complete without it. */
        record Required() implements Presence {}

        /** May be left out; then there is no value. */
        record Optional() implements Presence {}

        /** May be left out; then this value is taken. */
        record Defaulted(double value) implements Presence {}

        /** May be left out; then it follows from others, as said here. */
        record Derived(String from) implements Presence {}
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

    public static Presence derived(String from) {
        return new Presence.Derived(from);
    }

    public String key() {
        return quantity.key();
    }

    /** The key up to its last dot: {@code cockpit.bar} of {@code cockpit.bar.widthMm}. */
    public String group() {
        return key().substring(0, key().lastIndexOf('.'));
    }

    /** The key after its last dot. */
    public String name() {
        return key().substring(key().lastIndexOf('.') + 1);
    }

    @Override
    public String toString() {
        return key();
    }
}
