package rakeline.rider;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.BikeGroups;
import rakeline.geometry.Geometry;
import rakeline.geometry.HandPoint;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.quantity.Lazy;
import rakeline.quantity.Reading;

/** A solved bicycle and, where there is one, the rider on it. This is what the measures of this package measure. */
public final class Ridden {
    private static final String A_RIDER = "a rider";

    private final Geometry geometry;
    private final Optional<Rider> rider;
    private final Lazy<List<BodyPart>> body = Lazy.of(this::solveBody);

    private Ridden(Geometry geometry, Optional<Rider> rider) {
        this.geometry = geometry;
        this.rider = rider;
    }

    /** A bicycle, the rider's shoe and contact points in place of its own. */
    public static Ridden of(Bike bike, Optional<Rider> rider, Hands hands) {
        Bike fitted = rider.map(who -> who.on(bike)).orElse(bike);
        return new Ridden(Geometry.of(fitted, hands), rider);
    }

    /** The same rider and hands on another bicycle, whose numbers are taken as they are. */
    public Ridden on(Bike bike) {
        return new Ridden(Geometry.of(bike, geometry.hands()), rider);
    }

    /** As {@link #on}, for a bicycle that differs little: of foot and wheel, what is the same is not solved again. */
    public Ridden beside(Bike bike) {
        return new Ridden(geometry.beside(bike), rider);
    }

    /** The same with the hands elsewhere on the bar. */
    public Ridden with(Hands hands) {
        return new Ridden(Geometry.of(geometry.bike(), hands), rider);
    }

    public Geometry geometry() {
        return geometry;
    }

    public Optional<Rider> rider() {
        return rider;
    }

    /** The legs, whether they close or not; empty without a rider, a saddle position or cranks. */
    public Optional<Legs> legs() {
        return hasCranks()
                ? rider.flatMap(who ->
                        hip(who).map(hip -> Legs.of(who, hip, bike().get(Inputs.CRANK_LENGTH), ankleHeightMm(who))))
                : Optional.empty();
    }

    /** As measured; else over the pedals and soles of this bike, where both are given. */
    private double ankleHeightMm(Rider who) {
        double foot = bike().get(Inputs.PEDAL_STACK) + bike().get(Inputs.SOLE);
        boolean measured = !who.assumed().containsKey(RiderInputs.ANKLE_HEIGHT) || Double.isNaN(foot);
        return who.get(RiderInputs.ANKLE_HEIGHT) + (measured ? 0 : foot - RiderInputs.USUAL_FOOTING_MM);
    }

    /** Trunk and arms, whether they close or not; empty without a rider, a saddle position or a hand point. */
    public Optional<Torso> torso() {
        return rider.flatMap(who -> hip(who).flatMap(hip -> grip().map(grip -> Torso.of(who, hip, grip))));
    }

    /** The rider's pieces, cranks level; empty without a rider or in a posture that cannot close. */
    public List<BodyPart> body() {
        return body.get();
    }

    /** What of the posture does not close, each limb in a sentence's part; empty where all do. */
    public List<String> misses() {
        return Stream.concat(legs().map(Legs::miss).stream(), torso().map(Torso::miss).stream())
                .filter(miss -> !miss.isEmpty())
                .toList();
    }

    /** The rider's mass, kg, in this posture; where it cannot be taken, why. */
    public Reading posedKg() {
        return ofBody(parts -> parts.stream().mapToDouble(BodyPart::massKg).sum());
    }

    Reading ofRider(ToDoubleFunction<Rider> formula) {
        return rider.map(who -> Reading.of(formula.applyAsDouble(who))).orElseGet(() -> Reading.lacking(A_RIDER));
    }

    Reading ofLegs(ToDoubleFunction<Legs> formula) {
        return legs().map(legs -> unless(legs.miss(), () -> formula.applyAsDouble(legs)))
                .orElseGet(() -> Reading.lacking(hasCranks() ? whatLacks() : lackOr(BikeGroups.words("crank"))));
    }

    Reading ofTorso(ToDoubleFunction<Torso> formula) {
        return torso().map(torso -> unless(torso.miss(), () -> formula.applyAsDouble(torso)))
                .orElseGet(() -> Reading.lacking(whatLacks()));
    }

    Reading ofBody(ToDoubleFunction<List<BodyPart>> formula) {
        if (legs().isEmpty()) {
            return ofLegs(legs -> 0);
        }
        if (torso().isEmpty()) {
            return ofTorso(torso -> 0);
        }
        return unless(String.join("; ", misses()), () -> formula.applyAsDouble(body()));
    }

    private static Reading unless(String miss, DoubleSupplier value) {
        return miss.isEmpty() ? Reading.of(value.getAsDouble()) : Reading.nowhere(miss);
    }

    private String whatLacks() {
        return lackOr(bike().hasGroup("contact") ? HandPoint.lacking(geometry) : BikeGroups.words("contact"));
    }

    private String lackOr(String other) {
        return rider.isEmpty() ? A_RIDER : other;
    }

    private Bike bike() {
        return geometry.bike();
    }

    private boolean hasCranks() {
        return bike().hasGroup("crank");
    }

    private Optional<Point> hip(Rider who) {
        return bike().has(Inputs.CONTACT_SIT_X)
                ? Optional.of(new Point(
                        bike().get(Inputs.CONTACT_SIT_X) + who.get(RiderInputs.HIP_AHEAD),
                        bike().get(Inputs.CONTACT_SIT_Y) + who.get(RiderInputs.HIP_UP)))
                : Optional.empty();
    }

    /** On the bar that is there; without one, the hood point that is wanted. */
    private Optional<Point> grip() {
        boolean wanted =
                geometry.hands() == Hands.HOODS && !bike().has(Inputs.BAR_WIDTH) && bike().has(Inputs.CONTACT_HAND_X);
        return wanted
                ? Optional.of(new Point(bike().get(Inputs.CONTACT_HAND_X), bike().get(Inputs.CONTACT_HAND_Y)))
                : geometry.handPoint().map(HandPoint::at);
    }

    private List<BodyPart> solveBody() {
        Optional<Legs> legs = legs();
        Optional<Torso> torso = torso();
        if (legs.isEmpty() || torso.isEmpty() || !misses().isEmpty()) {
            return List.of();
        }
        Rider who = rider.orElseThrow();
        double hands = geometry.handPoint().map(HandPoint::halfWidthMm).orElse(who.get(RiderInputs.SHOULDER_WIDTH) / 2);
        return new Body(who, legs.get(), torso.get(), hands, bike().get(Inputs.STANCE_WIDTH) / 2).parts();
    }
}
