package rakeline.quantity;

import java.util.function.Function;

/**
 * An output: a quantity and the formula that reads it off a subject.
 *
 * @param <S> what is measured
 */
public record Measure<S>(Quantity quantity, Function<S, Reading> formula) implements Keyed {
    public Reading read(S subject) {
        return formula.apply(subject);
    }

    @Override
    public String key() {
        return quantity.key();
    }

    /** The key, so that a constant reads well where a key is printed. */
    @Override
    public String toString() {
        return key();
    }
}
