package rakeline.rider;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.quantity.Decimals;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;

/** A body, and the shoe and contact points that go with it. Never changes. */
public final class Rider {
    private static final String CRANK = "crank";
    private static final Input CLEAT = RiderInputs.CLEAT_SETBACK;

    private final String name;
    private final Entries given;
    private final BodyTable table;
    private final Map<Input, Double> own;
    private final Entries resolved;

    private Rider(String name, Entries given, BodyTable table, Map<Input, Double> own) {
        this.name = name;
        this.given = given;
        this.table = table;
        this.own = Map.copyOf(own);
        this.resolved = given.completed(RiderInputs.all(), input -> true);
    }

    /**
     * A rider of given numbers.
     *
     * @param given numbers of {@link RiderInputs}
     * @param own shoe, crank and contact numbers of the bike's inputs, which win over the bike's
     * @throws rakeline.quantity.Refusal for a missing key or a number out of its range
     */
    public static Rider of(String name, Entries given, BodyTable table, Map<Input, Double> own) {
        RiderInputs.all().stream()
                .filter(given::has)
                .forEach(input -> input.quantity().check(given.get(input)));
        List<Input> missing = RiderInputs.all().stream()
                .filter(input -> input.presence() instanceof Input.Presence.Required && !given.has(input))
                .toList();
        if (!missing.isEmpty()) {
            throw Input.notWhole(name, missing);
        }
        own.forEach((input, value) -> input.quantity().check(value));
        return new Rider(name, given, table, own);
    }

    public String name() {
        return name;
    }

    /** The value given, or what is assumed in its place; NaN where there is neither. */
    public double get(Input input) {
        return resolved.get(input);
    }

    /** How a body's mass is spread. */
    public BodyTable table() {
        return table;
    }

    /** Shoe, crank and contact numbers that win over the bike's. */
    public Map<Input, Double> own() {
        return own;
    }

    /** What was not given, with the value taken in its place. */
    public Map<Input, Double> assumed() {
        Map<Input, Double> assumed = new LinkedHashMap<>();
        List<Input> all = RiderInputs.all();
        all.stream()
                .filter(input -> !given.has(input) && resolved.has(input))
                .forEach(input -> assumed.put(input, resolved.get(input)));
        return assumed;
    }

    /** The same rider with one number changed; a cleat moved toward the heel takes the toe of the shoe forward. */
    public Rider with(Input input, double value) {
        return of(name, given.with(input, value), table, input.equals(CLEAT) ? toeMoved(value) : own);
    }

    private Map<Input, Double> toeMoved(double setback) {
        Map<Input, Double> moved = new LinkedHashMap<>(own);
        double before = given.has(CLEAT) ? given.get(CLEAT) : 0;
        moved.computeIfPresent(Inputs.TOE_FORWARD, (toe, forward) -> forward + setback - before);
        return moved;
    }

    /** The same rider with another table of masses. */
    public Rider with(BodyTable other) {
        return new Rider(name, given, other, own);
    }

    /** The bike with the rider's shoe, crank and contact points in place of its own. */
    public Bike on(Bike bike) {
        Map<Input, Double> worn = wornOn(bike, own);
        return worn.isEmpty() ? bike : bike.fitted(worn, name);
    }

    /** Of these numbers those that a bike can take: a crank length alone makes no crank where there is none. */
    public static Map<Input, Double> wornOn(Bike bike, Map<Input, Double> numbers) {
        Map<Input, Double> worn = new LinkedHashMap<>(numbers);
        if (!bike.hasGroup(CRANK)
                && !(worn.containsKey(Inputs.STANCE_WIDTH) && worn.containsKey(Inputs.CRANK_LENGTH))) {
            worn.keySet().removeIf(input -> input.group().equals(CRANK));
        }
        return worn;
    }

    /** The groups that both this rider and a bike give; the rider's win. */
    public List<String> groupsWonFrom(Bike bike) {
        return own.keySet().stream()
                .map(Input::group)
                .distinct()
                .filter(bike::hasGroup)
                .sorted()
                .toList();
    }

    /** From the pedal axis to the shoe's tip, from the body: 0.26 × foot + shoe + cleat setback (common practice). */
    public double toeForwardMm() {
        double setback = resolved.has(RiderInputs.CLEAT_SETBACK) ? get(RiderInputs.CLEAT_SETBACK) : 0;
        return 0.26 * get(RiderInputs.FOOT) + get(RiderInputs.SHOE_AHEAD) + setback;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Rider rider
                && name.equals(rider.name)
                && given.equals(rider.given)
                && table == rider.table
                && own.equals(rider.own);
    }

    @Override
    public int hashCode() {
        return name.hashCode() * 31 + given.hashCode();
    }

    /** One line: name and the numbers by which a body is known. */
    @Override
    public String toString() {
        return name + " · stature " + show(RiderInputs.STATURE) + " · inseam " + show(RiderInputs.INSEAM) + " · "
                + show(RiderInputs.MASS) + " kg";
    }

    private String show(Input input) {
        return Decimals.shown(get(input));
    }
}
