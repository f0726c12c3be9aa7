package rakeline.rider;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Nearest;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;

/** The numbers of a body by the keys that they have beside those of a bike: {@code rider.massKg}. */
public final class RiderKeys {
    private static final String PREFIX = "rider.";
    private static final Map<String, Input> BY_KEY = byKey();

    private RiderKeys() {}

    /** Whether a key is meant to be a rider's. */
    public static boolean isMeant(String key) {
        return key.startsWith(PREFIX);
    }

    /** Every key, in the order of the declarations. */
    public static List<String> all() {
        return List.copyOf(BY_KEY.keySet());
    }

    /**
     * A rider's number, read as a measure; lacking without a rider, or where neither given nor assumed.
     *
     * @throws Refusal for an unknown key, naming the nearest
     */
    public static Measure<Ridden> measure(String key) {
        Input input = input(key);
        Quantity quantity = input.quantity();
        return new Measure<>(
                quantity.named(key, "Rider: " + quantity.label()),
                ridden -> ridden.rider()
                        .filter(who -> Double.isNaN(who.get(input)))
                        .map(who -> Reading.lacking(quantity.inSentence() + " of the rider"))
                        .orElseGet(() -> ridden.ofRider(who -> who.get(input))));
    }

    /**
     * A rider with numbers changed; what follows from them follows.
     *
     * @throws Refusal for an unknown key, naming the nearest, or a number out of its range
     */
    public static Rider change(Rider rider, Map<String, Double> changes) {
        Rider changed = rider;
        for (Map.Entry<String, Double> change : changes.entrySet()) {
            changed = changed.with(input(change.getKey()), checked(change.getKey(), change.getValue()));
        }
        return changed;
    }

    private static Input input(String key) {
        Input input = BY_KEY.get(key);
        if (input == null) {
            throw new Refusal(key + " is not a number of a rider" + Nearest.hint(key, BY_KEY.keySet()));
        }
        return input;
    }

    private static double checked(String key, double value) {
        Quantity quantity = input(key).quantity();
        return quantity.named(key, quantity.label()).check(value);
    }

    private static Map<String, Input> byKey() {
        Map<String, Input> byKey = new LinkedHashMap<>();
        RiderInputs.all().forEach(input -> byKey.put(PREFIX + input.key(), input));
        return byKey;
    }
}
