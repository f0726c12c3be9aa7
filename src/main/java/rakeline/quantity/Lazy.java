package rakeline.quantity;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/**
 * A value computed when it is first asked for. Two threads may compute it at once; they get the same value.
 *
 * @param <T> never null
 */
public final class Lazy<T> {
    private final AtomicReference<T> value = new AtomicReference<>();
    private final Supplier<T> formula;

    private Lazy(Supplier<T> formula) {
        this.formula = formula;
    }

    public static <T> Lazy<T> of(Supplier<T> formula) {
        return new Lazy<>(formula);
    }

    public T get() {
        T known = value.get();
        if (known != null) {
            return known;
        }
        value.compareAndSet(null, formula.get());
        return value.get();
    }
}
