package rakeline.prelude;

import java.util.function.Function;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.study.Hold;

/**
 * A hold that still has to say what it solves for.
 *
 * @param <T> the study that goes on with it
 */
public final class Holding<T> {
    private final Function<Hold, T> study;
    private final Measure<Ride> measure;
    private final double value;

    Holding(Function<Hold, T> study, Measure<Ride> measure, double value) {
        this.study = study;
        this.measure = measure;
        this.value = value;
    }

    /**
     * Solves for the input with this key at each step, starting from the last solution, so that the measure keeps its
     * value.
     */
    public T by(String inputKey) {
        return study.apply(new Hold(measure, value, Setting.of(inputKey)));
    }

    /** Solves for this input at each step, starting from the last solution, so that the measure keeps its value. */
    public T by(Input input) {
        return by(input.key());
    }
}
