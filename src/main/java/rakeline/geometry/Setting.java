package rakeline.geometry;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.quantity.Input;
import rakeline.quantity.Nearest;
import rakeline.quantity.Quantity;
import rakeline.quantity.Refusal;

/**
 * What one key sets: an input, or the same input of both wheels ({@code wheels.both.tyreMm}).
 *
 * @param quantity as it is named on an axis
 */
public record Setting(Quantity quantity, List<Input> inputs) {
    private static final String FRONT = "wheels.front.";
    private static final String REAR = "wheels.rear.";
    private static final String BOTH = "wheels.both.";
    private static final Map<String, Setting> BY_KEY = Stream.concat(
                    Inputs.all().stream().map(Setting::of), bothWheels())
            .collect(Collectors.toUnmodifiableMap(Setting::key, setting -> setting));

    public Setting {
        inputs = List.copyOf(inputs);
    }

    public static Setting of(Input input) {
        return new Setting(input.quantity(), List.of(input));
    }

    /**
     * The setting with a key.
     *
     * @throws Refusal for an unknown key, naming the nearest
     */
    public static Setting of(String inputKey) {
        Setting setting = BY_KEY.get(inputKey);
        if (setting == null) {
            throw new Refusal(inputKey + " is not an input" + Nearest.hint(inputKey, BY_KEY.keySet()));
        }
        return setting;
    }

    /**
     * Changes by key as changes by input.
     *
     * @throws Refusal for an unknown key
     */
    public static Map<Input, Double> changes(Map<String, Double> byKey) {
        Map<Input, Double> changes = new HashMap<>();
        byKey.forEach((key, value) -> of(key).inputs().forEach(input -> changes.put(input, value)));
        return changes;
    }

    /** Every key that can be set. */
    public static List<String> keys() {
        return BY_KEY.keySet().stream().sorted().toList();
    }

    public String key() {
        return quantity.key();
    }

    /** The present value; that of the first wheel where both are set and differ. */
    public double valueIn(Bike bike) {
        return bike.get(inputs.get(0));
    }

    public boolean isWheel() {
        return key().startsWith("wheels.");
    }

    private static Stream<Setting> bothWheels() {
        return Inputs.all().stream()
                .filter(input -> input.key().startsWith(FRONT))
                .flatMap(front -> Inputs.all().stream()
                        .filter(rear -> rear.key().equals(REAR + front.name()))
                        .map(rear -> both(front, rear)));
    }

    private static Setting both(Input front, Input rear) {
        Quantity quantity = front.quantity();
        return new Setting(
                quantity.named(BOTH + front.name(), quantity.label().replace("Front ", "Both wheels, ")),
                List.of(front, rear));
    }
}
