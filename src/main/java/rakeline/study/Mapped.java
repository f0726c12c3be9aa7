package rakeline.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/**
 * A map, or a coarser picture of one.
 *
 * @param map as it was asked; a picture has fewer steps
 * @param values for each x in order, for each y in order; NaN is a gap
 * @param here the measure on the bike as it is; NaN where it has no value
 * @param gaps places without a value, in the order of the values
 */
public record Mapped(GridMap map, Numbers values, double here, List<Gap> gaps) {
    /** A place without a value, as an index of the values, and why. */
    public record Gap(int place, String reason) {}

    public Mapped {
        gaps = List.copyOf(gaps);
    }

    /** The value at the i-th x and the j-th y. */
    public double at(int i, int j) {
        return values.at(i * map.y().steps().size() + j);
    }

    /** As in {@code Road XS: toe room over head angle 69 to 74° and fork offset 40 to 55 mm, redrawn}. */
    public String title() {
        return map.start().bike().name() + ": "
                + Wording.lower(map.track().quantity().label()) + " over " + range(map.x()) + " and " + range(map.y())
                + ", " + Wording.ways(varied());
    }

    /** What stayed as it was, in words. */
    public String held() {
        return Wording.held(varied(), map.hold());
    }

    /** How many places have no value for each reason, in the order in which they are met. */
    public Map<String, Integer> reasons() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        gaps.forEach(gap -> counts.merge(gap.reason(), 1, Integer::sum));
        return Collections.unmodifiableMap(counts);
    }

    /** The cautions that belong to what was varied and tracked, each once. */
    public List<Caution> cautions() {
        return Quantity.cautionsOf(List.of(
                map.track().quantity(),
                map.x().varied().setting().quantity(),
                map.y().varied().setting().quantity()));
    }

    private List<Varied> varied() {
        return List.of(map.x().varied(), map.y().varied());
    }

    private static String range(GridMap.Axis axis) {
        Numbers steps = axis.steps();
        return Wording.range(axis.varied().setting().quantity(), steps.at(0), steps.at(steps.size() - 1));
    }
}
