package rakeline.study.fit;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import rakeline.rider.SaddleTarget;

/**
 * Where hoods and saddle are wanted, from BB, on the crank and pedals on which they were found. On a bicycle with
 * another crank the saddle is held from the pedal.
 *
 * @param sit empty where it is not known
 * @param standard standard uncertainties in millimetres, by the keys of a measure or of the group contact
 * @param from whose points they are, in words
 * @param footing what was under the foot, and what of it goes on every bicycle
 * @param hold what is kept where the crank is another
 */
public record Wanted(
        Point hand, Optional<Point> sit, Map<String, Double> standard, String from, Footing footing, Hold hold) {
    private static final List<Input> CONTACT =
            List.of(Inputs.CONTACT_HAND_X, Inputs.CONTACT_HAND_Y, Inputs.CONTACT_SIT_X, Inputs.CONTACT_SIT_Y);
    private static final String CRANK = "crank";
    private static final Set<String> FOOT = Set.of(CRANK, "shoe");

    /**
     * What is under a rider's foot.
     *
     * @param found crank and shoe on which the points were found
     * @param worn crank and shoe that go on every bicycle, unless others are chosen for it
     */
    public record Footing(Map<Input, Double> found, Map<Input, Double> worn) {
        public Footing {
            found = Map.copyOf(found);
            worn = Map.copyOf(worn);
        }

        static Footing of(Map<Input, Double> numbers) {
            return new Footing(numbers, numbers);
        }

        private double found(Input input) {
            return found.getOrDefault(input, Double.NaN);
        }
    }

    /**
     * What is kept where a bicycle has another crank.
     *
     * @param setback of the saddle
     * @param handsWithSaddle whether the hands are kept from the sit point, and not from BB
     */
    public record Hold(SaddleTarget.Setback setback, boolean handsWithSaddle) {
        /** Setback and hands from BB. */
        public static final Hold FROM_BB = new Hold(SaddleTarget.Setback.BB, false);

        /** As in {@code keeping the setback behind BB, hands kept from BB}. */
        public String words() {
            return "keeping " + setback.words() + ", hands kept from " + (handsWithSaddle ? "the sit point" : "BB");
        }
    }

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
                        "the hoods of " + bike.name() + " as built; its sit point is not given",
                        Footing.of(footing(bike)),
                        Hold.FROM_BB);
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
                "the contact points of " + rider.name(),
                Footing.of(footing(rider)),
                Hold.FROM_BB);
    }

    /**
     * A rider's contact points; where the rider does not give all four, those of a bike.
     *
     * @param today the bike that the rider rides today
     * @throws Refusal where neither says where the hands belong
     */
    public static Wanted of(Rider rider, Bike today) {
        return (missing(rider).isEmpty() ? of(rider) : of(today)).wornBy(rider);
    }

    private static List<String> missing(Rider rider) {
        return CONTACT.stream()
                .filter(input -> !rider.own().containsKey(input))
                .map(input -> input.quantity().withKey())
                .toList();
    }

    /** The contact points that a bike gives. */
    private static Wanted contact(Bike bike, String from) {
        return new Wanted(
                new Point(bike.get(Inputs.CONTACT_HAND_X), bike.get(Inputs.CONTACT_HAND_Y)),
                Optional.of(new Point(bike.get(Inputs.CONTACT_SIT_X), bike.get(Inputs.CONTACT_SIT_Y))),
                CONTACT.stream().collect(Collectors.toMap(Input::name, input -> Errors.standard(bike, input))),
                from,
                Footing.of(footing(bike)),
                Hold.FROM_BB);
    }

    private static Map<Input, Double> footing(Bike bike) {
        return Inputs.all().stream()
                .filter(input -> FOOT.contains(input.group()) && bike.hasGroup(input.group()) && bike.has(input))
                .collect(Collectors.toMap(input -> input, bike::get));
    }

    private static Map<Input, Double> footing(Rider rider) {
        return rider.own().entrySet().stream()
                .filter(number -> FOOT.contains(number.getKey().group()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** With a rider's own shoe and crank, as far as the rider's file gives them, in place of what goes on every bike. */
    public Wanted wornBy(Rider rider) {
        Map<Input, Double> worn = new HashMap<>(footing.worn());
        Map<Input, Double> own = footing(rider);
        boolean shod = own.containsKey(Inputs.TOE_FORWARD);
        worn.keySet().removeIf(input -> shod && !input.group().equals(CRANK));
        worn.putAll(own);
        return with(worn);
    }

    /** With some numbers of crank and shoe left as they are on each bike, where others were chosen for it. */
    public Wanted leaving(Collection<Input> chosen) {
        Map<Input, Double> worn = new HashMap<>(footing.worn());
        worn.keySet().removeAll(chosen);
        return with(worn);
    }

    /** With each bike's own cranks and pedals left on it. */
    public Wanted onOwnCranks() {
        return leaving(Inputs.all().stream()
                .filter(input -> input.group().equals(CRANK))
                .toList());
    }

    /** With something else kept where the crank is another. */
    public Wanted holding(Hold other) {
        return new Wanted(hand, sit, standard, from, footing, other);
    }

    private Wanted with(Map<Input, Double> worn) {
        return new Wanted(hand, sit, standard, from, new Footing(footing.found(), worn), hold);
    }

    /** A bike under this rider: their crank and shoe, and these points in place of its own. */
    public Bike on(Bike bike) {
        return seat(wear(bike));
    }

    /** A bike with the crank and shoe that go on every bicycle. */
    public Bike wear(Bike bike) {
        Map<Input, Double> worn = new HashMap<>(Rider.wornOn(bike, footing.worn()));
        worn.entrySet().removeIf(number -> bike.get(number.getKey()) == number.getValue());
        return worn.isEmpty() ? bike : bike.redraw(worn);
    }

    /**
     * A bike with these points in place of its own, the saddle held from its pedals; where the sit point is not known,
     * it keeps its own.
     *
     * @throws rakeline.quantity.Refusal where the saddle cannot be held from a crank so long
     */
    public Bike seat(Bike bike) {
        Map<Input, Double> numbers = new HashMap<>();
        if (sit.isPresent() || bike.hasGroup("contact")) {
            Point hands = handOn(bike);
            numbers.put(Inputs.CONTACT_HAND_X, hands.x());
            numbers.put(Inputs.CONTACT_HAND_Y, hands.y());
        }
        sitOn(bike).ifPresent(point -> {
            numbers.put(Inputs.CONTACT_SIT_X, point.x());
            numbers.put(Inputs.CONTACT_SIT_Y, point.y());
        });
        return bike.withSolved(numbers);
    }

    /** The sit point over a bike's cranks and pedals. */
    public Optional<Point> sitOn(Bike bike) {
        return saddle().map(saddle -> saddle.on(bike));
    }

    /** The hood point that is wanted on a bike. */
    public Point handOn(Bike bike) {
        return hold.handsWithSaddle() && sit.isPresent()
                ? hand.plus(sitOn(bike).orElseThrow().minus(sit.get()))
                : hand;
    }

    /** The saddle as it is held from the pedal; empty where the sit point is not known. */
    public Optional<SaddleTarget> saddle() {
        return sit.map(point -> new SaddleTarget(
                point,
                footing.found(Inputs.CRANK_LENGTH),
                footing.found(Inputs.PEDAL_STACK),
                footing.found(Inputs.SOLE),
                hold.setback()));
    }

    /** How the saddle is held, in words; empty where the sit point is not known. */
    public String held() {
        return saddle().map(saddle -> Double.isNaN(saddle.toPedalMm())
                        ? "the saddle is held from BB: the crank on which it was found is not known"
                        : "the saddle is held from the pedal, " + millimetres(saddle.toPedalMm()) + " at its furthest, "
                                + hold.words())
                .orElse("");
    }

    private static String millimetres(double value) {
        return Inputs.CONTACT_SIT_X.quantity().formatWithUnit(value);
    }

    private static HandPoint hoods(Bike bike) {
        return Geometry.of(bike, Hands.HOODS)
                .handPoint()
                .orElseThrow(() -> new Refusal(bike.name() + " has neither contact points nor a stem with a bar, so it"
                        + " says nowhere where the hands belong."));
    }
}
