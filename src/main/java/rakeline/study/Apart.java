package rakeline.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.geometry.Bike;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Refusal;

/**
 * How much of a change is which: several inputs changed, each alone with the others held and all together, redrawn, against
 * the present bike in per cent, and the remainder that no single one explains.
 *
 * @param present the bike as it is and who rides it
 * @param changes new values by setting, at least one
 */
public record Apart(Ride present, Map<Setting, Double> changes, List<Line> lines) {
    /**
     * One measure.
     *
     * @param present its value; NaN where it has none
     * @param alonePercent for each change in order, made alone
     * @param togetherPercent all made at once
     */
    public record Line(Quantity quantity, double present, List<Double> alonePercent, double togetherPercent) {
        public Line {
            alonePercent = List.copyOf(alonePercent);
        }

        /** What is left of all together when each alone is taken off. */
        public double remainderPercent() {
            return togetherPercent
                    - alonePercent.stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    public Apart {
        changes = Collections.unmodifiableMap(new LinkedHashMap<>(changes));
        lines = List.copyOf(lines);
    }

    /**
     * Solves it.
     *
     * @throws Refusal for no change at all, or a number that is not accepted
     */
    public static Apart of(Ride present, Map<Setting, Double> changes, List<Measure<Ride>> measures) {
        if (changes.isEmpty()) {
            throw new Refusal("nothing is changed; accepted is at least one KEY=VALUE.");
        }
        List<Ride> alone = new ArrayList<>();
        Bike all = present.bike();
        for (Map.Entry<Setting, Double> change : changes.entrySet()) {
            String key = change.getKey().key();
            alone.add(present.on(present.bike().with(key, change.getValue())));
            all = all.with(key, change.getValue());
        }
        Ride together = present.on(all);
        return new Apart(
                present,
                changes,
                measures.stream()
                        .map(measure -> line(measure, present, alone, together))
                        .toList());
    }

    private static Line line(Measure<Ride> measure, Ride present, List<Ride> alone, Ride together) {
        double now = measure.read(present).orNaN();
        return new Line(
                measure.quantity(),
                now,
                alone.stream().map(ride -> percent(measure, ride, now)).toList(),
                percent(measure, together, now));
    }

    private static double percent(Measure<Ride> measure, Ride ride, double now) {
        return 100 * (measure.read(ride).orNaN() - now) / Math.abs(now);
    }
}
