package rakeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/**
 * What a sensitivity found.
 *
 * @param columns for each input, the slope of each measure: its unit per the input's; NaN where the measure has no
 *     value beside the bike as it is
 * @param errors for each input, what each slope is good to: an estimate, in the slope's unit, as many as there are slopes
 */
public record Sensitivities(Sensitivity sensitivity, List<Numbers> columns, List<Numbers> errors) {
    public Sensitivities {
        columns = List.copyOf(columns);
        errors = List.copyOf(errors);
    }

    /** As in {@code Road XS: change per unit, redrawn}. */
    public String title() {
        return sensitivity.start().bike().name() + ": change per unit of input, " + Wording.ways(sensitivity.inputs());
    }

    /** What stays as it is while one input changes, in words. */
    public String held() {
        return Wording.held(sensitivity.inputs(), Optional.empty());
    }

    /** The cautions that belong to inputs and measures, each once. */
    public List<Caution> cautions() {
        List<Quantity> shown = new ArrayList<>();
        sensitivity.tracks().forEach(track -> shown.add(track.quantity()));
        sensitivity.inputs().forEach(input -> shown.add(input.setting().quantity()));
        return Quantity.cautionsOf(shown);
    }
}
