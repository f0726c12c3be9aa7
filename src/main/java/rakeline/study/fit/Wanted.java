package rakeline.study.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.HandPoint;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Point;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;
import rakeline.rider.Rider;

/**
 * Where hoods and saddle are wanted, from BB.
 *
 * @param sit empty where it is not known
 * @param standard standard uncertainties in millimetres, by the keys of a measure or of the group contact
 * @param from whose points they are, in words
 */
public record Wanted(Point hand, Optional<Point> sit, Map<String, Double> standard, String from) {
    private static final List<Input> CONTACT =
            List.of(Inputs.CONTACT_HAND_X, Inputs.CONTACT_HAND_Y, Inputs.CONTACT_SIT_X, Inputs.CONTACT_SIT_Y);

    public Wanted {
        standard = Map.copyOf(standard);
    }

    /**
     * The contact points of a bike; where it has none, its hoods as built.
     *
     * @throws Refusal where it has neither
     */
    public static Wanted of(Bike bike) {
        return bike.has(Inputs.CONTACT_HAND_X)
                ? contact(bike, "the contact points of " + bike.name())
                : new Wanted(
                        hoods(bike).at(),
                        Optional.empty(),
                        Errors.standardOf(bike, List.of(Measures.HAND_X, Measures.HAND_Y)),
                        "the hoods of " + bike.name() + " as built; its sit point is not given");
    }

    /**
     * A rider's contact points.
     *
     * @throws Refusal where the rider has none
     */
    public static Wanted of(Rider rider) {
        List<String> missing = missing(rider);
        if (!missing.isEmpty()) {
            throw new Refusal(rider.name() + " does not say where hands and saddle belong: "
                    + String.join(", ", missing)
                    + (missing.size() == 1 ? " is" : " are") + " missing; give them in the group contact of the rider's"
                    + " file, or match to the bike ridden today.");
        }
        return new Wanted(
                new Point(rider.own().get(Inputs.CONTACT_HAND_X), rider.own().get(Inputs.CONTACT_HAND_Y)),
                Optional.of(new Point(
                        rider.own().get(Inputs.CONTACT_SIT_X), rider.own().get(Inputs.CONTACT_SIT_Y))),
                CONTACT.stream()
                        .collect(Collectors.toMap(
                                Input::name, input -> input.quantity().uncertaintyOrNaN())),
                "the contact points of " + rider.name());
    }

    /**
     * A rider's contact points; where the rider does not give all four, those of a bike.
     *
     * @param today the bike that the rider rides today
     * @throws Refusal where neither says where the hands belong
     */
    public static Wanted of(Rider rider, Bike today) {
        return missing(rider).isEmpty() ? of(rider) : of(today);
    }

    private static List<String> missing(Rider rider) {
        return CONTACT.stream()
                .filter(input -> !rider.own().containsKey(input))
                .map(Input::key)
                .toList();
    }

    /** The contact points that a bike gives. */
    private static Wanted contact(Bike bike, String from) {
        return new Wanted(
                new Point(bike.get(Inputs.CONTACT_HAND_X), bike.get(Inputs.CONTACT_HAND_Y)),
                Optional.of(new Point(bike.get(Inputs.CONTACT_SIT_X), bike.get(Inputs.CONTACT_SIT_Y))),
                CONTACT.stream().collect(Collectors.toMap(Input::name, input -> Errors.standard(bike, input))),
                from);
    }

    /** A bike with these points in place of its own; where the sit point is not known, it keeps its own. */
    public Bike on(Bike bike) {
        Map<Input, Double> numbers = new HashMap<>();
        if (sit.isPresent() || bike.hasGroup("contact")) {
            numbers.put(Inputs.CONTACT_HAND_X, hand.x());
            numbers.put(Inputs.CONTACT_HAND_Y, hand.y());
        }
        sit.ifPresent(point -> {
            numbers.put(Inputs.CONTACT_SIT_X, point.x());
            numbers.put(Inputs.CONTACT_SIT_Y, point.y());
        });
        return bike.withSolved(numbers);
    }

    private static HandPoint hoods(Bike bike) {
        return Geometry.of(bike, Hands.HOODS)
                .handPoint()
                .orElseThrow(() -> new Refusal(bike.name() + " has neither the group contact nor a cockpit with a bar,"
                        + " so it says nowhere where the hands belong."));
    }
}
