package rakeline.handling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.MassInputs;
import rakeline.geometry.OwnMass;
import rakeline.geometry.Point;
import rakeline.handling.BicycleParameters.Wheel;
import rakeline.quantity.Input;

/** The bicycle's own four parts with mass, given or by default, and a list of what was taken. */
final class BicycleMasses {
    /** Spin inertia over mass and radius squared, diametral over spin: specimen A, Moore 2012 (S). */
    private static final double FRONT_SPIN = 0.149 / (2.02 * 0.3435 * 0.3435);

    private static final double FRONT_DIAMETRAL = 0.0884 / 0.149;
    private static final double REAR_SPIN = 0.152 / (3.11 * 0.3410 * 0.3410);
    private static final double REAR_DIAMETRAL = 0.0904 / 0.152;

    /** Moments over mass: specimen B, Moore 2012 (S). */
    private static final Ratios FRAME = Ratios.of(7.22, 0.373, 0.455, 0.717, -0.0383);

    private static final Ratios FORK = Ratios.of(3.04, 0.1768, 0.0446, 0.144, -0.0273);

    /** Measured sets of moments miss what a rigid body can have by a few per cent. */
    private static final double WITHIN_ERROR = 1.1;

    private final Bike bike;
    private final Geometry geometry;
    private final List<MassUsed> used = new ArrayList<>();
    private final Wheel rear;
    private final Wheel front;
    private final Lump fork;
    private final Lump frame;
    private final double handShare;

    private BicycleMasses(Geometry geometry) {
        this.bike = geometry.bike();
        this.geometry = geometry;
        this.front = wheel(
                "F",
                bike.get(Inputs.FRONT_RADIUS),
                List.of(MassInputs.FRONT_WHEEL_MASS, MassInputs.FRONT_WHEEL_SPIN, MassInputs.FRONT_WHEEL_DIAMETRAL),
                FRONT_SPIN,
                FRONT_DIAMETRAL);
        this.rear = wheel(
                "R",
                bike.get(Inputs.REAR_RADIUS),
                List.of(MassInputs.REAR_WHEEL_MASS, MassInputs.REAR_WHEEL_SPIN, MassInputs.REAR_WHEEL_DIAMETRAL),
                REAR_SPIN,
                REAR_DIAMETRAL);
        this.fork = weighFork();
        this.frame = weighFrame();
        this.handShare = take(MassInputs.HAND_SHARE, usual(MassInputs.HAND_SHARE)) / 100;
    }

    static BicycleMasses of(Geometry geometry) {
        return new BicycleMasses(geometry);
    }

    Wheel rear() {
        return rear;
    }

    Wheel front() {
        return front;
    }

    /** Fork with stem and bar. */
    Lump fork() {
        return fork;
    }

    Lump frame() {
        return frame;
    }

    double massKg() {
        return rear.mass() + front.mass() + fork.mass() + frame.mass();
    }

    /** Of forearms and hands that moves with the bar, 0..1. */
    double handShare() {
        return handShare;
    }

    List<MassUsed> used() {
        return List.copyOf(used);
    }

    /** What of the moments of inertia no body can have, in words; empty where each part is possible. */
    Optional<String> impossible() {
        return Stream.of(
                        impossible("front", front),
                        impossible("rear", rear),
                        impossible("fork and bar", fork),
                        impossible("the frame", frame))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** A wheel is flat, or thicker; all of its mass lies within its radius. */
    private static Optional<String> impossible(String which, Wheel wheel) {
        double most = Math.min(2 * wheel.ixx(), wheel.mass() * wheel.radius() * wheel.radius());
        return wheel.iyy() <= most * WITHIN_ERROR
                ? Optional.empty()
                : Optional.of(
                        "no wheel of " + MassInputs.FRONT_WHEEL_MASS.quantity().formatWithUnit(wheel.mass())
                                + " and a radius of "
                                + Inputs.FRONT_RADIUS.quantity().formatWithUnit(wheel.radius() * 1000)
                                + " has the moments of inertia of the " + which + " wheel: "
                                + moment("spin", wheel.iyy()) + " and " + moment("diametral", wheel.ixx()));
    }

    /** The principal moments of a body are above 0, and none exceeds the sum of the other two. */
    private static Optional<String> impossible(String name, Lump part) {
        double middle = (part.roll() + part.yaw()) / 2;
        double half = Math.hypot((part.roll() - part.yaw()) / 2, part.product());
        double largest = Math.max(middle + half, part.pitch());
        boolean exists = middle > half && 2 * largest <= (2 * middle + part.pitch()) * WITHIN_ERROR;
        return exists
                ? Optional.empty()
                : Optional.of("no body has the moments of inertia of " + name + ": " + moment("roll", part.roll())
                        + ", " + moment("yaw", part.yaw()) + ", " + moment("pitch", part.pitch()) + " and "
                        + moment("product", part.product()));
    }

    private static String moment(String name, double value) {
        return name + " " + MassInputs.FORK_ROLL.quantity().formatWithUnit(value);
    }

    private Wheel wheel(String letter, double radiusMm, List<Input> inputs, double spinRatio, double diametralRatio) {
        double radius = radiusMm / 1000;
        double mass = take(inputs.get(0), usual(inputs.get(0)));
        double spin = take(inputs.get(1), spinRatio * mass * radius * radius);
        double diametral = take(inputs.get(2), diametralRatio * spin);
        return new Wheel(letter, radius, mass, diametral, spin);
    }

    private Lump weighFork() {
        double mass = take(MassInputs.FORK_MASS, usual(MassInputs.FORK_MASS));
        Point centre = OwnMass.usualFork(geometry);
        return new Lump(
                mass,
                take(MassInputs.FORK_MASS_X, centre.x()) / 1000,
                take(MassInputs.FORK_MASS_Y, centre.y()) / 1000,
                0,
                take(MassInputs.FORK_ROLL, mass * FORK.roll()),
                take(MassInputs.FORK_YAW, mass * FORK.yaw()),
                take(MassInputs.FORK_PITCH, mass * FORK.pitch()),
                take(MassInputs.FORK_PRODUCT, mass * FORK.product()));
    }

    private Lump weighFrame() {
        double mass = take(MassInputs.FRAME_MASS, usual(MassInputs.FRAME_MASS));
        Point centre = OwnMass.usualFrame(geometry);
        return new Lump(
                mass,
                take(MassInputs.FRAME_MASS_X, centre.x()) / 1000,
                take(MassInputs.FRAME_MASS_Y, centre.y()) / 1000,
                0,
                take(MassInputs.FRAME_ROLL, mass * FRAME.roll()),
                take(MassInputs.FRAME_YAW, mass * FRAME.yaw()),
                take(MassInputs.FRAME_PITCH, mass * FRAME.pitch()),
                take(MassInputs.FRAME_PRODUCT, mass * FRAME.product()));
    }

    /** What the bike gives, or else this, noted either way. */
    private double take(Input input, double otherwise) {
        boolean given = bike.given().has(input);
        double value = given ? bike.get(input) : otherwise;
        used.add(new MassUsed(input.quantity(), value, given));
        return value;
    }

    private static double usual(Input input) {
        return ((Input.Presence.Defaulted) input.presence()).value();
    }

    /** Moments over mass, m². */
    private record Ratios(double roll, double yaw, double pitch, double product) {
        static Ratios of(double mass, double roll, double yaw, double pitch, double product) {
            return new Ratios(roll / mass, yaw / mass, pitch / mass, product / mass);
        }
    }
}
