package rakeline.geometry;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import rakeline.quantity.Decimals;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/**
 * A bicycle as a chart, a tape and an author gave it: numbers of {@link Inputs}, group by group. Never changes.
 *
 * <p>A group is there or not; frame, fork and wheels always are. A group that is there holds every key without a
 * default. {@link #with} redraws: the number is taken as drawn, everything else as printed; {@link Refit} keeps the
 * frame rigid instead.
 */
public final class Bike implements BikeOrRide {
    /** The groups without which there is no bicycle. */
    public static final Set<String> NEEDED_GROUPS = Set.of("frame", "fork", "wheels.front", "wheels.rear");

    /** What moves a radius when it changes. */
    private static final Set<Input> TYRES =
            Set.of(Inputs.FRONT_BEAD_SEAT, Inputs.FRONT_TYRE, Inputs.REAR_BEAD_SEAT, Inputs.REAR_TYRE);

    private final String name;
    private final Entries given;
    private final Set<String> groups;
    private final Map<String, Provenance> provenance;
    private final Entries resolved;

    private Bike(String name, Entries given, Set<String> groups, Map<String, Provenance> provenance, Entries resolved) {
        this.name = name;
        this.given = given;
        this.groups = groups;
        this.provenance = provenance;
        this.resolved = resolved;
    }

    /**
     * A bicycle of given numbers.
     *
     * @param groups groups that are there even if all their keys take their defaults
     * @throws Refusal for a missing key, a number out of its range, or a shape that cannot close
     */
    public static Bike of(String name, Entries given, Set<String> groups, Map<String, Provenance> provenance) {
        Set<String> present = new HashSet<>(groups);
        present.addAll(NEEDED_GROUPS);
        Inputs.all().stream().filter(given::has).map(Input::group).forEach(present::add);
        Set.copyOf(present).forEach(group -> present.add(outer(group)));
        Entries resolved = given.completed(Inputs.all(), input -> present.contains(input.group()));
        Bike bike = new Bike(name, given, Set.copyOf(present), Map.copyOf(provenance), resolved);
        bike.checkComplete();
        return bike.checkedShape();
    }

    /** Itself. */
    @Override
    public Bike bike() {
        return this;
    }

    public String name() {
        return name;
    }

    /** The value given, or its default; NaN where there is neither. */
    public double get(Input input) {
        return resolved.get(input);
    }

    public boolean has(Input input) {
        return !Double.isNaN(get(input));
    }

    /**
     * The value of an input by its key, or NaN.
     *
     * @throws Refusal for an unknown key
     */
    public double get(String key) {
        return Setting.of(key).valueIn(this);
    }

    /** Only what was given, without defaults. */
    public Entries given() {
        return given;
    }

    /** Whether a group, as in {@code crank} or {@code cockpit.bar}, is there. */
    public boolean hasGroup(String group) {
        return groups.contains(group);
    }

    public Set<String> groups() {
        return groups;
    }

    public Map<String, Provenance> provenance() {
        return provenance;
    }

    public Bike named(String newName) {
        return new Bike(newName, given, groups, provenance, resolved);
    }

    /** Redraws with one number changed. */
    public Bike with(Input input, double value) {
        return redraw(Map.of(input, value));
    }

    /** Redraws with one number changed; {@code wheels.both.…} changes both wheels. */
    public Bike with(String key, double value) {
        return redraw(Setting.changes(Map.of(key, value)));
    }

    /**
     * Redraws with several numbers changed at once. A changed tyre or bead seat moves a given radius by as much, unless
     * the radius is among the changes.
     *
     * @throws Refusal for a number out of its range or a shape that cannot close
     */
    public Bike redraw(Map<Input, Double> changes) {
        changes.forEach((input, value) -> input.quantity().check(value));
        return replace(Collections.disjoint(TYRES, changes.keySet()) ? changes : withRadii(changes));
    }

    private Map<Input, Double> withRadii(Map<Input, Double> changes) {
        Map<Input, Double> all = new LinkedHashMap<>(changes);
        followTyre(all, Inputs.FRONT_RADIUS, Inputs.FRONT_BEAD_SEAT, Inputs.FRONT_TYRE);
        followTyre(all, Inputs.REAR_RADIUS, Inputs.REAR_BEAD_SEAT, Inputs.REAR_TYRE);
        return all;
    }

    /** Puts numbers in place as they are. */
    Bike replace(Map<Input, Double> changes) {
        for (Input input : changes.keySet()) {
            if (!has(input)) {
                return of(name, given.with(changes), groups, provenance);
            }
        }
        return replaceKnown(changes);
    }

    /** Numbers that have a value already add no group, and leave everything but themselves and their followers valid. */
    private Bike replaceKnown(Map<Input, Double> changes) {
        changes.forEach((input, value) -> input.quantity().check(value));
        Entries now = given.with(changes);
        return new Bike(name, now, groups, provenance, resolved.followed(now, changes, Inputs.followers()))
                .checkedShape();
    }

    /** One line: name and the numbers by which a bicycle is known. */
    @Override
    public String toString() {
        String line = name + " · stack " + show(Inputs.STACK) + " · reach " + show(Inputs.REACH) + " · head angle "
                + show(Inputs.HEAD_ANGLE) + "° · offset " + show(Inputs.FORK_OFFSET) + " · "
                + show(Inputs.FRONT_BEAD_SEAT) + "×" + show(Inputs.FRONT_TYRE);
        return has(Inputs.CRANK_LENGTH) ? line + " · crank " + show(Inputs.CRANK_LENGTH) : line;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Bike bike
                && name.equals(bike.name)
                && given.equals(bike.given)
                && groups.equals(bike.groups)
                && provenance.equals(bike.provenance);
    }

    @Override
    public int hashCode() {
        return name.hashCode() * 31 + given.hashCode();
    }

    /** The group that a group lies in, {@code cockpit} for {@code cockpit.bar}; one that lies in none is its own. */
    private static String outer(String group) {
        int dot = group.indexOf('.');
        return dot < 0 ? group : group.substring(0, dot);
    }

    private String show(Input input) {
        return Decimals.shown(Math.round(get(input) * 100) / 100.0);
    }

    private void followTyre(Map<Input, Double> changes, Input radius, Input beadSeat, Input tyre) {
        if (given.has(radius) && !changes.containsKey(radius)) {
            double moved = change(changes, beadSeat) / 2 + change(changes, tyre);
            if (moved != 0) {
                changes.put(radius, radius.quantity().check(get(radius) + moved));
            }
        }
    }

    private double change(Map<Input, Double> changes, Input input) {
        return changes.getOrDefault(input, get(input)) - get(input);
    }

    private void checkComplete() {
        for (Input input : Inputs.all()) {
            if (given.has(input)) {
                input.quantity().check(given.get(input));
            } else if (input.presence() instanceof Input.Presence.Required && groups.contains(input.group())) {
                throw new Refusal(input.key() + " is missing; accepted is "
                        + input.quantity().accepted() + " "
                        + input.quantity().unit().symbol() + ".");
            }
        }
    }

    private Bike checkedShape() {
        double chainstay = get(Inputs.CHAINSTAY);
        double drop = get(Inputs.BB_DROP);
        if (Math.abs(drop) >= chainstay) {
            throw new Refusal("frame.chainstayMm is " + Decimals.shortest(chainstay)
                    + "; it must be longer than the BB drop, " + Decimals.shortest(drop)
                    + " mm, or the rear triangle cannot close.");
        }
        return this;
    }
}
