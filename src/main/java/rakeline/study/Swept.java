package rakeline.study;

import java.util.ArrayList;
import java.util.List;
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/**
 * What a sweep found.
 *
 * @param sweep as it was asked, the held target settled
 * @param columns one for each tracked measure
 * @param gaps steps without a value, in order, each with its reason
 * @param uncertain which inputs are uncertain and by how much, in words; empty where that was not asked
 */
public record Swept(Sweep sweep, List<Column> columns, List<Gap> gaps, String uncertain) {
    /**
     * One tracked measure.
     *
     * @param values as many as there are steps; NaN is a gap
     * @param here its value on the bike as it is; NaN where it has none
     * @param uncertainties standard, to first order, as many as there are steps; NaN where it has none or where that
     *     would mislead; none where it was not asked
     */
    public record Column(Quantity quantity, Numbers values, double here, Numbers uncertainties) {}

    /**
     * A step without a value.
     *
     * @param key of the measure without one, or of the swept input where no bike has the step
     */
    public record Gap(int step, String key, String reason) {}

    public Swept {
        columns = List.copyOf(columns);
        gaps = List.copyOf(gaps);
    }

    /** As in {@code Road XS: head angle 69 to 74°, redrawn}. */
    public String title() {
        Numbers steps = sweep.steps();
        return sweep.bike().name() + ": "
                + Wording.range(sweep.vary().quantity(), steps.at(0), steps.at(steps.size() - 1)) + ", "
                + sweep.mode().participle();
    }

    /** What stayed as it was, in words. */
    public String held() {
        return Wording.held(List.of(new Varied(sweep.vary(), sweep.mode())), sweep.hold());
    }

    /** The cautions that belong to what was swept, solved for and tracked, each once. */
    public List<Caution> cautions() {
        List<Quantity> shown = new ArrayList<>();
        columns.forEach(column -> shown.add(column.quantity()));
        shown.add(sweep.vary().quantity());
        sweep.hold().ifPresent(hold -> shown.add(hold.by().quantity()));
        return Quantity.cautionsOf(shown);
    }
}
