package rakeline.geometry;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/**
 * How the numbers of a handlebar hang together, from the bar clamp's centre. A bar with levers carries its hood point:
 * the lever stands on the end of the bar's reach, and both turn with the bar. One without says where its hood point is.
 */
final class Handlebar {
    private static final double SAME_MM = 1e-6;
    private static final Set<Input> HOODS = Set.of(Inputs.HOOD_FORWARD, Inputs.HOOD_RISE);
    private static final Set<Input> LEVER = Set.of(Inputs.LEVER_AHEAD, Inputs.LEVER_UP);

    private Handlebar() {}

    static boolean isHood(Input input) {
        return HOODS.contains(input);
    }

    /** Where the levers put the hood point; NaN where there are none. */
    static Point hoods(Entries given) {
        return new Point(given.get(Inputs.BAR_REACH) + given.get(Inputs.LEVER_AHEAD), given.get(Inputs.LEVER_UP))
                .turned(rotationRad(given));
    }

    /** A point of the bar as it stands, given as it is on a bar that is not turned. */
    static Point turned(Bike bike, Point ofBar) {
        return ofBar.turned(Math.toRadians(bike.get(Inputs.BAR_ROTATION)));
    }

    /**
     * The numbers with no hood point beside levers.
     *
     * @throws Refusal where levers and hood point contradict each other, or the bar's reach is missing
     */
    static Entries consistent(Entries given) {
        if (LEVER.stream().noneMatch(given::has)) {
            return given;
        }
        checkReach(given);
        HOODS.forEach(input -> checkSame(given, input));
        return given.with(without(HOODS));
    }

    /** Changes of a redrawn bike, with what they move: levers where the hoods are drawn, hoods where the bar is turned. */
    static Map<Input, Double> followed(Bike bike, Map<Input, Double> changes) {
        boolean hoods = !Collections.disjoint(HOODS, changes.keySet());
        boolean levers = !Collections.disjoint(LEVER, changes.keySet());
        if (levers) {
            return leversSet(bike, changes);
        }
        if (hasLever(bike)) {
            return hoods ? leverMoved(bike, changes) : changes;
        }
        boolean turns = changes.containsKey(Inputs.BAR_ROTATION) && bike.has(Inputs.HOOD_FORWARD);
        return turns && !hoods ? hoodsTurned(bike, changes) : changes;
    }

    private static Map<Input, Double> leversSet(Bike bike, Map<Input, Double> changes) {
        Map<Input, Double> all = hasLever(bike) ? new LinkedHashMap<>(changes) : withLever(bike, changes);
        Entries set = bike.given().with(without(HOODS)).with(all).with(changes);
        HOODS.forEach(input -> checkSame(set, input));
        all.keySet().removeAll(hasLever(bike) ? HOODS : Set.of());
        return all;
    }

    private static boolean hasLever(Bike bike) {
        return bike.has(Inputs.LEVER_AHEAD);
    }

    /** The hood point that was given becomes a lever's, as far as the changes do not say where it stands. */
    private static Map<Input, Double> withLever(Bike bike, Map<Input, Double> changes) {
        Point lever = lever(bike, changes, new Point(bike.get(Inputs.HOOD_FORWARD), bike.get(Inputs.HOOD_RISE)));
        Map<Input, Double> all = new LinkedHashMap<>(changes);
        all.putIfAbsent(Inputs.LEVER_AHEAD, lever.x());
        all.putIfAbsent(Inputs.LEVER_UP, lever.y());
        all.putAll(without(HOODS));
        return all;
    }

    private static Map<Input, Double> leverMoved(Bike bike, Map<Input, Double> changes) {
        Point hoods = new Point(
                changes.getOrDefault(Inputs.HOOD_FORWARD, bike.get(Inputs.HOOD_FORWARD)),
                changes.getOrDefault(Inputs.HOOD_RISE, bike.get(Inputs.HOOD_RISE)));
        Point lever = lever(bike, changes, hoods);
        Map<Input, Double> all = new LinkedHashMap<>(changes);
        all.keySet().removeAll(HOODS);
        all.put(Inputs.LEVER_AHEAD, lever.x());
        all.put(Inputs.LEVER_UP, lever.y());
        return all;
    }

    /** The lever that has its hood point there. */
    private static Point lever(Bike bike, Map<Input, Double> changes, Point hoods) {
        double rotation = Math.toRadians(changes.getOrDefault(Inputs.BAR_ROTATION, bike.get(Inputs.BAR_ROTATION)));
        double reach = changes.getOrDefault(Inputs.BAR_REACH, bike.get(Inputs.BAR_REACH));
        Point straight = rotation == 0 ? hoods : hoods.turned(-rotation);
        return straight.minus(new Point(reach, 0));
    }

    private static Map<Input, Double> hoodsTurned(Bike bike, Map<Input, Double> changes) {
        double by = Math.toRadians(changes.get(Inputs.BAR_ROTATION) - bike.get(Inputs.BAR_ROTATION));
        Point hoods = new Point(bike.get(Inputs.HOOD_FORWARD), bike.get(Inputs.HOOD_RISE)).turned(by);
        Map<Input, Double> all = new LinkedHashMap<>(changes);
        all.put(Inputs.HOOD_FORWARD, hoods.x());
        all.put(Inputs.HOOD_RISE, hoods.y());
        return all;
    }

    private static double rotationRad(Entries given) {
        return given.has(Inputs.BAR_ROTATION) ? Math.toRadians(given.get(Inputs.BAR_ROTATION)) : 0;
    }

    private static Map<Input, Double> without(Set<Input> inputs) {
        Map<Input, Double> none = new LinkedHashMap<>();
        inputs.forEach(input -> none.put(input, Double.NaN));
        return none;
    }

    private static void checkReach(Entries given) {
        if (!given.has(Inputs.BAR_REACH)) {
            throw new Refusal("the levers (cockpit.bar.lever) stand on the bar's reach, and cockpit.bar.reachMm is"
                    + " missing; accepted is " + Inputs.BAR_REACH.quantity().accepted() + " mm.");
        }
    }

    private static void checkSame(Entries given, Input input) {
        Point hoods = hoods(given);
        double byLever = input.equals(Inputs.HOOD_FORWARD) ? hoods.x() : hoods.y();
        if (given.has(input) && Math.abs(given.get(input) - byLever) > SAME_MM) {
            throw new Refusal(input.key() + " is " + input.quantity().said(given.get(input))
                    + ", but reach and levers of the bar put the hoods at "
                    + input.quantity().said(byLever) + "; accepted is either the levers or the hood point.");
        }
    }
}
