package rakeline.quantity;

import java.util.Optional;

/** A number of a row as people read it: its name says the unit, the unit how many decimals. */
public record Named(String name, double value) {
    /** The number alone. */
    public String number() {
        return unit().map(unit -> Decimals.fixed(value, unit.decimals())).orElseGet(() -> Decimals.brief(value));
    }

    /** The number with its unit where the name ends in one. */
    public String said() {
        return unit().map(unit -> unit.attach(number())).orElseGet(this::number);
    }

    private Optional<Unit> unit() {
        return Unit.of(name);
    }
}
