package rakeline.geometry;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;
import rakeline.quantity.Sentences;

/**
 * Another fork, sag, tyre or wheel on a frame that stays one rigid body: it turns about the ground until both tyres
 * touch. Frame, saddle, post, stem and bar turn rigidly about BB; the contact points that are wanted do not.
 *
 * @param bike as it stands afterwards
 * @param pitchDeg by how much the frame turned, nose up
 * @param sitMiss rigidly turned sit point minus the wanted one; (0, 0) where none is wanted
 * @param handMiss the hoods afterwards minus the wanted hand point; without a bar, as for the sit point
 */
public record Refit(Bike bike, double pitchDeg, Point sitMiss, Point handMiss) {
    private static final Set<Input> FORK = Set.of(Inputs.FORK_OFFSET, Inputs.AXLE_TO_CROWN, Inputs.FORK_SAG);

    /** Whether a number belongs to what a refit exchanges: fork length, offset, sag, and the wheels. */
    public static boolean exchanges(Input input) {
        return FORK.contains(input) || input.key().startsWith("wheels.");
    }

    /**
     * Refuses what no refit of a bike can change, whatever the value.
     *
     * @throws Refusal for a number of the frame itself, or of a fork where the present one's length is unknown
     */
    public static void check(Bike bike, List<Input> inputs) {
        inputs.forEach(Refit::checkNotFrame);
        if (inputs.contains(Inputs.AXLE_TO_CROWN) || inputs.contains(Inputs.FORK_OFFSET)) {
            knownLength(bike, bike.side());
        }
    }

    /**
     * Refits a bike. Changes that are neither fork nor wheel nor frame are taken as they are.
     *
     * @throws Refusal for a number of the frame itself, an unknown fork length, or a bicycle that cannot be built
     */
    public static Refit of(Bike before, Map<Input, Double> changes) {
        changes.keySet().forEach(Refit::checkNotFrame);
        Map<Input, Double> exchanged = new HashMap<>(changes);
        exchanged.keySet().removeIf(input -> !exchanges(input));
        Map<Input, Double> others = new HashMap<>(changes);
        others.keySet().removeAll(exchanged.keySet());
        Bike base = before.redraw(others);
        exchanged.forEach((input, value) -> input.quantity().check(value));
        return turn(base, base.drawn(exchanged));
    }

    private static void checkNotFrame(Input input) {
        if (input.key().startsWith("frame.") || input.equals(Inputs.LOWER_STACK)) {
            throw new Refusal(Sentences.upper(input.quantity().withKey())
                    + " belongs to the frame, which a refit keeps rigid; accepted is a number of"
                    + " the fork, the wheels, or what is mounted on them.");
        }
    }

    private static Refit turn(Bike old, Bike drawn) {
        SideView side = old.side();
        Point axle = exchangedAxle(old, drawn, side);
        Point rear = side.rearAxle();
        double rise = drawn.get(Inputs.FRONT_RADIUS) - drawn.get(Inputs.REAR_RADIUS);
        Shape.checkApart(drawn, axle.minus(rear), rise);
        double pitch = pitchRad(axle.minus(rear), rise);
        Bike turned = drawn.withSolved(pitch == 0 ? Map.of() : turnedNumbers(old, drawn, rear, pitch));
        return new Refit(
                turned,
                Math.toDegrees(pitch),
                miss(old, Inputs.CONTACT_SIT_X, Inputs.CONTACT_SIT_Y, pitch),
                handMiss(turned, pitch));
    }

    /** The hoods as they stand now minus where the hands are wanted; without a bar, the wanted point turned along. */
    private static Point handMiss(Bike turned, double pitch) {
        Optional<HandPoint> hoods = Geometry.of(turned).handPoint();
        return hoods.isPresent() && turned.has(Inputs.CONTACT_HAND_X)
                ? hoods.get()
                        .at()
                        .minus(new Point(turned.get(Inputs.CONTACT_HAND_X), turned.get(Inputs.CONTACT_HAND_Y)))
                : miss(turned, Inputs.CONTACT_HAND_X, Inputs.CONTACT_HAND_Y, pitch);
    }

    /** Where the new fork carries the front axle, the frame standing as before. */
    private static Point exchangedAxle(Bike old, Bike drawn, SideView side) {
        double longer = forkLengthChange(old, drawn, side);
        double further = drawn.get(Inputs.FORK_OFFSET) - old.get(Inputs.FORK_OFFSET);
        return new Point(
                side.frontAxleXMm() + longer * side.cosHead() + further * side.sinHead(),
                side.frontAxleYMm() - longer * side.sinHead() + further * side.cosHead());
    }

    /** The change of the distance along the steering axis from crown to axle. */
    private static double forkLengthChange(Bike old, Bike drawn, SideView side) {
        double sag = drawn.get(Inputs.FORK_SAG) - old.get(Inputs.FORK_SAG);
        if (!changes(old, drawn, Inputs.AXLE_TO_CROWN) && !changes(old, drawn, Inputs.FORK_OFFSET)) {
            return -sag;
        }
        double before = knownLength(old, side);
        double after = drawn.has(Inputs.AXLE_TO_CROWN) ? drawn.get(Inputs.AXLE_TO_CROWN) : before;
        return along(after, drawn.get(Inputs.FORK_OFFSET)) - along(before, old.get(Inputs.FORK_OFFSET)) - sag;
    }

    private static boolean changes(Bike old, Bike drawn, Input input) {
        return Double.compare(old.get(input), drawn.get(input)) != 0;
    }

    private static double knownLength(Bike bike, SideView side) {
        double length = bike.has(Inputs.AXLE_TO_CROWN)
                ? bike.get(Inputs.AXLE_TO_CROWN)
                : ForkLength.impliedMm(bike, side).orNaN();
        if (Double.isNaN(length)) {
            throw new Refusal(
                    "the length of the fork that " + bike.name() + " has is not known, so another fork cannot be"
                            + " fitted; give its axle to crown (fork.axleToCrownMm), or head tube and lower headset stack"
                            + " (frame.headTubeMm, fork.lowerStackMm).");
        }
        return length;
    }

    private static double along(double axleToCrown, double offset) {
        if (axleToCrown <= Math.abs(offset)) {
            throw new Refusal("Axle to crown (fork.axleToCrownMm) is "
                    + Inputs.AXLE_TO_CROWN.quantity().said(axleToCrown)
                    + "; it must be longer than the fork offset, "
                    + Inputs.FORK_OFFSET.quantity().said(offset) + ".");
        }
        return Math.sqrt(axleToCrown * axleToCrown - offset * offset);
    }

    /** Nose up: the axles' line must rise by the difference of the radii. */
    private static double pitchRad(Point rearToFront, double rise) {
        double wanted = Math.asin(rise / rearToFront.length());
        double pitch = wanted - Math.atan2(rearToFront.y(), rearToFront.x());
        return Math.abs(pitch) < 1e-13 ? 0 : pitch;
    }

    private static Map<Input, Double> turnedNumbers(Bike old, Bike drawn, Point rear, double pitch) {
        double pitchDeg = Math.toDegrees(pitch);
        double at = old.get(Inputs.SEAT_ANGLE_AT);
        Point top = new Point(old.get(Inputs.REACH), old.get(Inputs.STACK)).turned(pitch);
        SeatAxis seat = SeatAxis.of(old).turned(pitch);
        Map<Input, Double> numbers = new HashMap<>();
        numbers.put(Inputs.REACH, top.x());
        numbers.put(Inputs.STACK, top.y());
        numbers.put(Inputs.HEAD_ANGLE, old.get(Inputs.HEAD_ANGLE) - pitchDeg);
        numbers.put(Inputs.BB_DROP, rear.turned(pitch).y());
        numbers.put(Inputs.SEAT_ANGLE_AT, at);
        numbers.put(Inputs.SEAT_ANGLE, Math.toDegrees(Math.atan2(at, -seat.xAtHeight(at))));
        numbers.put(Inputs.SEAT_TUBE_ANGLE, old.get(Inputs.SEAT_TUBE_ANGLE) - pitchDeg);
        numbers.putAll(turnedBar(drawn, pitch));
        return numbers;
    }

    private static Map<Input, Double> turnedBar(Bike drawn, double pitch) {
        if (!drawn.has(Inputs.HOOD_FORWARD)) {
            return Map.of();
        }
        if (drawn.has(Inputs.LEVER_AHEAD)) {
            return Map.of(Inputs.BAR_ROTATION, drawn.get(Inputs.BAR_ROTATION) + Math.toDegrees(pitch));
        }
        Point hoods = new Point(drawn.get(Inputs.HOOD_FORWARD), drawn.get(Inputs.HOOD_RISE)).turned(pitch);
        Map<Input, Double> bar = new HashMap<>(Map.of(Inputs.HOOD_FORWARD, hoods.x(), Inputs.HOOD_RISE, hoods.y()));
        if (drawn.has(Inputs.BAR_REACH) && drawn.has(Inputs.BAR_DROP)) {
            Point drops = new Point(drawn.get(Inputs.BAR_REACH), -drawn.get(Inputs.BAR_DROP)).turned(pitch);
            bar.put(Inputs.BAR_REACH, drops.x());
            bar.put(Inputs.BAR_DROP, -drops.y());
        }
        return bar;
    }

    private static Point miss(Bike bike, Input x, Input y, double pitch) {
        if (!bike.has(x)) {
            return new Point(0, 0);
        }
        Point wanted = new Point(bike.get(x), bike.get(y));
        return wanted.turned(pitch).minus(wanted);
    }
}
