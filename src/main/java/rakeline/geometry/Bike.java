package rakeline.geometry;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rakeline.quantity.Decimals;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;

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
    private final SideView side;

    private final Origin origin;

    /** What a bike was made of by changes, and whose shoe is on it; no part of what makes bikes equal. */
    private record Origin(String name, Entries given, String shoeOf) {}

    private Bike(
            String name,
            Entries given,
            Set<String> groups,
            Map<String, Provenance> provenance,
            Entries resolved,
            Origin origin) {
        this.name = name;
        this.given = given;
        this.groups = groups;
        this.provenance = provenance;
        this.resolved = resolved;
        this.origin = origin;
        this.side = SideView.of(this);
    }

    /**
     * A bicycle of numbers that someone entered.
     *
     * @param groups groups that are there even if all their keys take their defaults
     * @throws Refusal for a missing key, a number out of its range, or a shape that cannot be built
     */
    public static Bike of(String name, Entries given, Set<String> groups, Map<String, Provenance> provenance) {
        Inputs.all().stream()
                .filter(given::has)
                .forEach(input -> input.quantity().check(given.get(input)));
        return solved(name, given, groups, provenance, new Origin(name, Handlebar.consistent(given), ""));
    }

    private static Bike solved(
            String name, Entries given, Set<String> groups, Map<String, Provenance> provenance, Origin origin) {
        Set<String> present = new HashSet<>(groups);
        present.addAll(NEEDED_GROUPS);
        Inputs.all().stream().filter(given::has).map(Input::group).forEach(present::add);
        Set.copyOf(present).forEach(group -> addOuter(group, present));
        Entries consistent = Handlebar.consistent(given);
        Entries resolved = consistent.completed(Inputs.all(), input -> present.contains(input.group()));
        Bike bike = new Bike(name, consistent, Set.copyOf(present), Map.copyOf(provenance), resolved, origin);
        BikeGroups.checkWhole(bike);
        return bike.built();
    }

    /** The bicycle itself, as a bicycle without a rider is asked. */
    @Override
    public Bike bike() {
        return this;
    }

    /** What it is called, as titles and legends show it. */
    public String name() {
        return name;
    }

    /** The value given, or its default; NaN where there is neither. */
    public double get(Input input) {
        return resolved.get(input);
    }

    /** Whether an input has a value, given or by default. */
    public boolean has(Input input) {
        return !Double.isNaN(get(input));
    }

    /**
     * The value of an input by its key, in the unit that the key ends in; NaN where there is none.
     *
     * @throws Refusal for an unknown key
     */
    public double get(String inputKey) {
        return Setting.of(inputKey).valueIn(this);
    }

    /** Only what was given, without defaults. */
    public Entries given() {
        return given;
    }

    /** Whether a group, as in {@code crank} or {@code cockpit.bar}, is there. */
    public boolean hasGroup(String group) {
        return groups.contains(group);
    }

    /** The groups of numbers that are there, as in {@code frame}, {@code crank}, {@code cockpit.bar}. */
    public Set<String> groups() {
        return groups;
    }

    /** Where numbers come from, by key: charted, measured, assumed or solved, and their standard uncertainty. */
    public Map<String, Provenance> provenance() {
        return provenance;
    }

    /** Axles and steering axis. */
    SideView side() {
        return side;
    }

    /** The given numbers that nobody could enter as they are: those that were solved for and left the accepted range. */
    public List<Input> beyondEntry() {
        return Inputs.all().stream()
                .filter(input ->
                        given.has(input) && !input.quantity().accepted().contains(given.get(input)))
                .toList();
    }

    /** The same bicycle under another name, as titles and legends show it. */
    public Bike named(String newName) {
        return new Bike(newName, given, groups, provenance, resolved, origin);
    }

    /** The name of the bike that redraws and refits made this one of, as its file gave it. */
    public String startName() {
        return origin.name();
    }

    /** The given numbers that are others than its file's; a rider's own do not count. NaN for one that was taken away. */
    public Map<Input, Double> changed() {
        Map<Input, Double> changed = new LinkedHashMap<>();
        Inputs.all().stream()
                .filter(input -> Double.compare(given.get(input), origin.given().get(input)) != 0)
                .forEach(input -> changed.put(input, given.get(input)));
        return changed;
    }

    /** Whose the shoe is that is on it: the name of a rider, or empty for the bike's own. */
    public String shoeOf() {
        return origin.shoeOf();
    }

    /**
     * With a rider's shoe and contact points in place of its own, which count as no change of the bike.
     *
     * @param own numbers of the groups shoe and contact
     * @param riderName whose shoe it is said to be
     * @throws Refusal for a number out of its range
     */
    public Bike fitted(Map<Input, Double> own, String riderName) {
        boolean shoe = own.keySet().stream().anyMatch(input -> input.group().equals("shoe"));
        Origin fitted = new Origin(origin.name(), origin.given().with(own), shoe ? riderName : origin.shoeOf());
        return redraw(own).madeOf(fitted);
    }

    /**
     * The bicycle redrawn with one number changed: that number as drawn, everything else as printed.
     *
     * @param value the new value, in the input's unit
     * @throws Refusal for a number out of its range or a shape that cannot close
     */
    public Bike with(Input input, double value) {
        return redraw(Map.of(input, value));
    }

    /**
     * The bicycle redrawn with one number changed: that number as drawn, everything else as printed; {@code
     * wheels.both.…} changes both wheels.
     *
     * @param value the new value, in the input's unit
     * @throws Refusal for an unknown key, a number out of its range or a shape that cannot close
     */
    public Bike with(String inputKey, double value) {
        return redraw(Setting.changes(Map.of(inputKey, value)));
    }

    /**
     * Redraws with several numbers that someone entered. A changed tyre or bead seat moves a given radius by as much,
     * unless the radius is among the changes.
     *
     * @throws Refusal for a number out of its range or a shape that cannot be built
     */
    public Bike redraw(Map<Input, Double> changes) {
        changes.forEach((input, value) -> input.quantity().check(value));
        return withSolved(changes);
    }

    /**
     * Redraws with numbers that nobody entered: solved for, turned with the frame, or off by an uncertainty. They may
     * leave the range in which a number is accepted from a file or a person; a radius follows its tyre as it does when
     * redrawn.
     *
     * @throws Refusal for a shape that cannot be built
     */
    public Bike withSolved(Map<Input, Double> changes) {
        return drawn(changes).built();
    }

    /** As {@link #withSolved}, whether it can be built or not: a step on the way to the bicycle that is meant. */
    Bike drawn(Map<Input, Double> changes) {
        Map<Input, Double> barred = Handlebar.followed(this, changes);
        Map<Input, Double> all = Collections.disjoint(TYRES, barred.keySet()) ? barred : withRadii(barred);
        return all.keySet().stream().allMatch(this::has)
                ? replaceKnown(all)
                : solved(name, given.with(all), groups, provenance, origin);
    }

    private Map<Input, Double> withRadii(Map<Input, Double> changes) {
        Map<Input, Double> all = new LinkedHashMap<>(changes);
        followTyre(all, Inputs.FRONT_RADIUS, Inputs.FRONT_BEAD_SEAT, Inputs.FRONT_TYRE);
        followTyre(all, Inputs.REAR_RADIUS, Inputs.REAR_BEAD_SEAT, Inputs.REAR_TYRE);
        return all;
    }

    /** Numbers that have a value already add no group, and leave everything but themselves and their followers valid. */
    private Bike replaceKnown(Map<Input, Double> changes) {
        Entries now = given.with(changes);
        Entries whole = resolved.followed(now, changes, Inputs.followers());
        return new Bike(name, now, groups, provenance, whole, origin);
    }

    private Bike built() {
        Shape.check(this);
        return this;
    }

    private Bike madeOf(Origin other) {
        return new Bike(name, given, groups, provenance, resolved, other);
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

    /** The groups that a group lies in, {@code cockpit} and {@code cockpit.bar} for {@code cockpit.bar.lever}. */
    private static void addOuter(String group, Set<String> groups) {
        for (int dot = group.lastIndexOf('.'); dot > 0; dot = group.lastIndexOf('.', dot - 1)) {
            groups.add(group.substring(0, dot));
        }
    }

    private String show(Input input) {
        return Decimals.shown(Math.round(get(input) * 100) / 100.0);
    }

    private void followTyre(Map<Input, Double> changes, Input radius, Input beadSeat, Input tyre) {
        if (given.has(radius) && !changes.containsKey(radius)) {
            double moved = change(changes, beadSeat) / 2 + change(changes, tyre);
            if (moved != 0) {
                changes.put(radius, get(radius) + moved);
            }
        }
    }

    private double change(Map<Input, Double> changes, Input input) {
        return changes.getOrDefault(input, get(input)) - get(input);
    }
}
