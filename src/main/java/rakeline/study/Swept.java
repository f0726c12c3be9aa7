package rakeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/**
 * What a sweep found.
 *
 * @param sweep as it was asked, the held target settled
 * @param columns one for each tracked measure
 * @param gaps steps without a value, in order, each with its reason
 */
public record Swept(Sweep sweep, List<Column> columns, List<Gap> gaps) {
    /**
     * One tracked measure.
     *
     * @param values as many as there are steps; NaN is a gap
     * @param here its value on the bike as it is; NaN where it has none
     */
    public record Column(Quantity quantity, Numbers values, double here) {}

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
        Quantity x = sweep.vary().quantity();
        Numbers steps = sweep.steps();
        return sweep.bike().name() + ": " + lower(x.label()) + " " + Decimals.shortest(steps.at(0)) + " to "
                + x.unit().attach(Decimals.shortest(steps.at(steps.size() - 1))) + ", "
                + sweep.mode().participle();
    }

    /** What stayed as it was, in words. */
    public String held() {
        String rest = sweep.mode() == Mode.REDRAW
                ? redrawn()
                : "the frame, one rigid body that turns about the ground until both tyres touch";
        return sweep.hold()
                        .map(hold -> lower(hold.measure().quantity().label()) + " at "
                                + hold.measure().quantity().formatWithUnit(hold.target()) + " by solving for "
                                + lower(hold.by().quantity().label()) + "; ")
                        .orElse("")
                + rest + ".";
    }

    /** The cautions that belong to what was swept, solved for and tracked, each once. */
    public List<String> cautions() {
        List<Quantity> shown = new ArrayList<>();
        columns.forEach(column -> shown.add(column.quantity()));
        shown.add(sweep.vary().quantity());
        sweep.hold().ifPresent(hold -> shown.add(hold.by().quantity()));
        return Quantity.cautionsOf(shown);
    }

    private String redrawn() {
        return sweep.vary().isWheel() ? "BB drop and every other input, as drawn" : "every other input, as drawn";
    }

    private static String lower(String label) {
        boolean acronym = label.length() > 1 && Character.isUpperCase(label.charAt(1));
        return acronym ? label : label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }
}
