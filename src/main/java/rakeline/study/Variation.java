package rakeline.study;

import java.util.HashMap;
import java.util.Map;
import rakeline.geometry.Bike;
import rakeline.geometry.Refit;
import rakeline.geometry.Setting;
import rakeline.quantity.Input;

/** A bike with one number that varies. */
public record Variation(Bike base, Setting vary, Mode mode) {
    public Variation {
        if (mode == Mode.REFIT) {
            Refit.check(base, vary.inputs());
        }
    }

    /**
     * The bike at a value.
     *
     * @throws rakeline.quantity.Refusal where no bike has it
     */
    public Bike at(double value) {
        return apply(base, changes(vary, value));
    }

    /** The bike at a value, another of its numbers changed as well: exchanged with it, or drawn anew before. */
    public Bike at(double value, Setting by, double byValue) {
        Map<Input, Double> varied = changes(vary, value);
        Map<Input, Double> solved = changes(by, byValue);
        if (mode == Mode.REDRAW || by.inputs().stream().allMatch(Refit::exchanges)) {
            varied.putAll(solved);
            return apply(base, varied);
        }
        return apply(base.redraw(solved), varied);
    }

    private Bike apply(Bike bike, Map<Input, Double> changes) {
        return mode == Mode.REDRAW
                ? bike.redraw(changes)
                : Refit.of(bike, changes).bike();
    }

    private static Map<Input, Double> changes(Setting setting, double value) {
        Map<Input, Double> changes = new HashMap<>();
        setting.inputs().forEach(input -> changes.put(input, value));
        return changes;
    }
}
