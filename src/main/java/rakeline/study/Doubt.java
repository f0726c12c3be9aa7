package rakeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.geometry.Setting;
import rakeline.quantity.Decimals;
import rakeline.quantity.Input;
import rakeline.quantity.Quantity;

/**
 * One error of unknown size that one input has, or several share.
 *
 * @param key of the input; that of both wheels where they share it
 * @param parts the inputs, each with its standard uncertainty
 */
public record Doubt(String key, List<Part> parts) {
    private static final String BOTH_RADII = "wheels.both.radiusMm";

    /**
     * An input and its standard uncertainty, in its unit.
     *
     * @param uncertainty above 0
     */
    public record Part(Input input, double uncertainty) {}

    public Doubt {
        parts = List.copyOf(parts);
    }

    /**
     * Every doubt about a bike's numbers: those given whose uncertainty is known, from their provenance or else from
     * their declaration, and both wheel radii, also where they are nominal.
     *
     * @param wheelsShare whether both radii have the same error, as one who pumps and measures both alike makes it
     */
    public static List<Doubt> about(Bike bike, boolean wheelsShare) {
        List<Doubt> doubts = new ArrayList<>();
        List<Part> radii = new ArrayList<>();
        for (Input input : Inputs.all()) {
            double uncertainty = uncertainty(bike, input);
            if (uncertainty > 0 && wheelsShare && isRadius(input)) {
                radii.add(new Part(input, uncertainty));
            } else if (uncertainty > 0) {
                doubts.add(new Doubt(input.key(), List.of(new Part(input, uncertainty))));
            }
        }
        if (!radii.isEmpty()) {
            doubts.add(new Doubt(
                    radii.size() == 2 ? BOTH_RADII : radii.get(0).input().key(), radii));
        }
        return List.copyOf(doubts);
    }

    /** The key's declared setting, for its label and unit. */
    public Setting setting() {
        return Setting.of(key);
    }

    /** As in {@code head angle ±0.2°}. */
    String words() {
        Quantity quantity = setting().quantity();
        String size = parts.stream()
                .map(Part::uncertainty)
                .distinct()
                .map(Decimals::shortest)
                .collect(Collectors.joining(" and "));
        String shared = parts.size() > 1 ? " (one error)" : "";
        return Wording.lower(quantity.label()) + " ±" + quantity.unit().attach(size) + shared;
    }

    static boolean isRadius(Input input) {
        return input.equals(Inputs.FRONT_RADIUS) || input.equals(Inputs.REAR_RADIUS);
    }

    private static double uncertainty(Bike bike, Input input) {
        if (!bike.given().has(input) && !isRadius(input)) {
            return Double.NaN;
        }
        Provenance provenance = bike.provenance().get(input.key());
        boolean stated = provenance != null && !Double.isNaN(provenance.standardUncertainty());
        return stated ? provenance.standardUncertainty() : input.quantity().uncertaintyOrNaN();
    }
}
