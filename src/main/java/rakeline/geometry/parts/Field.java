package rakeline.geometry.parts;

import java.util.List;
import rakeline.geometry.Inputs;
import rakeline.quantity.Input;
import rakeline.quantity.Quantity;

/**
 * A number of a stock part.
 *
 * @param name in a parts file, within its category
 * @param option where a combination of parts is written down
 * @param inputs the bike's numbers that it becomes
 * @param needed whether every part of the category gives it
 */
public record Field(String name, String option, List<Input> inputs, boolean needed) {
    public Field {
        inputs = List.copyOf(inputs);
    }

    static Field needed(String name, String option, Input... inputs) {
        return new Field(name, option, List.of(inputs), true);
    }

    static Field optional(String name, String option, Input input) {
        return new Field(name, option, List.of(input), false);
    }

    /** How it is read, shown and accepted. */
    public Quantity quantity() {
        return inputs.equals(List.of(Inputs.FRONT_TYRE, Inputs.REAR_TYRE))
                ? inputs.get(0).quantity().named(option, "Tyre")
                : inputs.get(0)
                        .quantity()
                        .named(option, inputs.get(0).quantity().label());
    }
}
