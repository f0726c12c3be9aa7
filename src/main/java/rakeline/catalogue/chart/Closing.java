package rakeline.catalogue.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Provenance;
import rakeline.geometry.SideView;
import rakeline.quantity.Decimals;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;

/**
 * Solves a chart that does not say stack, reach or BB drop for them: BB drop from the BB's height, the stack from fork
 * and head tube standing on the front axle, the reach from the effective top tube. To a crank's length, which charts
 * print without it, it adds how far the pedals stand apart.
 */
final class Closing {
    /** Stands in while a number is looked for; what is solved does not depend on it. */
    private static final Map<Input, Double> STAND_IN = Map.of(Inputs.STACK, 800.0, Inputs.REACH, 500.0);

    /** What is assumed where a chart gives other numbers of its group. Source: common practice, road cranks 230 to 270 mm. */
    static final Map<Input, Double> ASSUMED = Map.of(Inputs.STANCE_WIDTH, 250.0);

    private static final double EXACT = 1e9;

    private final Map<Input, Double> values;
    private final Map<String, Provenance> provenance;
    private final List<String> notes = new ArrayList<>();

    private Closing(Map<Input, Double> values, Map<String, Provenance> provenance) {
        this.values = values;
        this.provenance = provenance;
    }

    /**
     * Completes the numbers of a size.
     *
     * @return what was solved or assumed, as {@code frame.stackMm 545.3 (solved)}
     */
    static List<String> close(Map<Input, Double> values, Map<String, Provenance> provenance) {
        Closing closing = new Closing(values, provenance);
        closing.drop();
        closing.stack();
        closing.reach();
        closing.assume();
        return List.copyOf(closing.notes);
    }

    private void drop() {
        if (isMissing(Inputs.BB_DROP) && has(Inputs.CHARTED_BB_HEIGHT) && hasRearWheel()) {
            put(Inputs.BB_DROP, rearRadius() - values.get(Inputs.CHARTED_BB_HEIGHT), Provenance.Origin.SOLVED);
        }
    }

    private void stack() {
        if (isMissing(Inputs.STACK) && has(Inputs.HEAD_TUBE, Inputs.AXLE_TO_CROWN) && canStand()) {
            if (isMissing(Inputs.LOWER_STACK)) {
                put(Inputs.LOWER_STACK, 0, Provenance.Origin.ASSUMED);
            }
            Bike bike = standing();
            SideView side = SideView.of(bike);
            put(
                    Inputs.STACK,
                    side.stackMm() + (axisMm(bike) - side.axisLengthMm()) * side.sinHead(),
                    Provenance.Origin.SOLVED);
        }
    }

    /** Along the steering axis, from the head tube's top edge down to the foot of the front axle's perpendicular. */
    private double axisMm(Bike bike) {
        double length = bike.get(Inputs.AXLE_TO_CROWN);
        double offset = bike.get(Inputs.FORK_OFFSET);
        return bike.get(Inputs.HEAD_TUBE)
                + bike.get(Inputs.LOWER_STACK)
                + Math.sqrt(Math.max(0, length * length - offset * offset))
                - bike.get(Inputs.FORK_SAG);
    }

    private void reach() {
        if (isMissing(Inputs.REACH) && has(Inputs.STACK, Inputs.CHARTED_EFFECTIVE_TOP_TUBE) && canStand()) {
            Bike bike = standing();
            double topTube = Measures.EFFECTIVE_TOP_TUBE.read(Geometry.of(bike)).orNaN();
            put(
                    Inputs.REACH,
                    bike.get(Inputs.REACH) + values.get(Inputs.CHARTED_EFFECTIVE_TOP_TUBE) - topTube,
                    Provenance.Origin.SOLVED);
        }
    }

    private void assume() {
        ASSUMED.forEach((input, value) -> {
            boolean begun =
                    values.keySet().stream().anyMatch(given -> given.group().equals(input.group()));
            if (begun && isMissing(input)) {
                put(input, value, Provenance.Origin.ASSUMED);
            }
        });
    }

    /** The bike so far, with something in place of what is not known yet. */
    private Bike standing() {
        Map<Input, Double> numbers = new HashMap<>(STAND_IN);
        numbers.putAll(frameForkWheels());
        return Bike.of("Standing", Entries.none().with(numbers), Set.of(), Map.of());
    }

    private Map<Input, Double> frameForkWheels() {
        Map<Input, Double> numbers = new HashMap<>(values);
        numbers.keySet().removeIf(input -> !Bike.NEEDED_GROUPS.contains(input.group()));
        return numbers;
    }

    private boolean canStand() {
        return Inputs.all().stream()
                .filter(input -> input.presence() instanceof Input.Presence.Required)
                .filter(input -> Bike.NEEDED_GROUPS.contains(input.group()))
                .allMatch(input -> STAND_IN.containsKey(input) || has(input));
    }

    private boolean hasRearWheel() {
        return has(Inputs.REAR_RADIUS) || has(Inputs.REAR_BEAD_SEAT, Inputs.REAR_TYRE);
    }

    private double rearRadius() {
        return has(Inputs.REAR_RADIUS)
                ? values.get(Inputs.REAR_RADIUS)
                : values.get(Inputs.REAR_BEAD_SEAT) / 2 + values.get(Inputs.REAR_TYRE);
    }

    private boolean isMissing(Input input) {
        return !values.containsKey(input);
    }

    private boolean has(Input... inputs) {
        return Stream.of(inputs).allMatch(values::containsKey);
    }

    private void put(Input input, double value, Provenance.Origin origin) {
        double exact = Math.rint(value * EXACT) / EXACT;
        values.put(input, exact);
        provenance.put(input.key(), Provenance.of(origin));
        notes.add(input.key() + " " + Decimals.shortest(Math.rint(exact * 100) / 100) + " (" + origin.word() + ")");
    }
}
