package rakeline.geometry;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import rakeline.quantity.Input;
import rakeline.quantity.Lazy;
import rakeline.quantity.Reading;

/**
 * A bike with everything that follows from its numbers; each part is solved when it is first asked for. This is what
 * {@link Measures} measure.
 */
public final class Geometry {
    private final Bike bike;
    private final Hands hands;
    private final SideView side;
    private final Lazy<Foot> foot;

    private Geometry(Bike bike, Hands hands) {
        this.bike = bike;
        this.hands = hands;
        this.side = bike.side();
        this.foot = Lazy.of(this::solveFoot);
    }

    private Geometry(Bike bike, Geometry near) {
        this.bike = bike;
        this.hands = near.hands;
        this.side = bike.side();
        this.foot = Lazy.of(() -> solveFoot().orSame(near.foot()));
    }

    /** The bike with its hands on the hoods. */
    public static Geometry of(Bike bike) {
        return of(bike, Hands.HOODS);
    }

    public static Geometry of(Bike bike, Hands hands) {
        return new Geometry(bike, hands);
    }

    /**
     * The same hands on another bike that differs little from this one, which it keeps: what is the same of foot and
     * wheel is not solved again.
     */
    public Geometry beside(Bike other) {
        return new Geometry(other, this);
    }

    public Bike bike() {
        return bike;
    }

    public Hands hands() {
        return hands;
    }

    public SideView side() {
        return side;
    }

    /** Stem and bar clamp; empty without a cockpit. */
    public Optional<Cockpit> cockpit() {
        return bike.has(Inputs.STEM_LENGTH) ? Optional.of(Cockpit.of(bike, side)) : Optional.empty();
    }

    /** Where the hand is; empty without a bar, or on drops that are not given. */
    public Optional<HandPoint> handPoint() {
        boolean drops = bike.has(Inputs.BAR_REACH) && bike.has(Inputs.BAR_DROP);
        if (!bike.has(Inputs.BAR_WIDTH) || (hands == Hands.DROPS && !drops)) {
            return Optional.empty();
        }
        return cockpit().map(cockpit -> HandPoint.of(bike, side, cockpit, hands));
    }

    /** Where the rider is to sit; empty where it is not given. */
    public Optional<Point> sitPoint() {
        return bike.hasGroup("contact")
                ? Optional.of(new Point(bike.get(Inputs.CONTACT_SIT_X), bike.get(Inputs.CONTACT_SIT_Y)))
                : Optional.empty();
    }

    /** The top tube; empty where it is not given. */
    public Optional<TopTube> topTube() {
        return bike.hasGroup("frame.topTube") ? Optional.of(TopTube.of(bike, side)) : Optional.empty();
    }

    /** Post and rails for the wanted sit point; empty where a group they need is not given. */
    public Optional<SaddlePosition> saddlePosition() {
        boolean given = Stream.of("contact", "seatpost", "saddle").allMatch(bike::hasGroup);
        return given ? Optional.of(SaddlePosition.of(bike)) : Optional.empty();
    }

    /** Foot, pedal and front wheel of a bike that has cranks. */
    Foot foot() {
        return foot.get();
    }

    /** The reading, unless some of the inputs have no value; then these, or their absent groups, are what is lacking. */
    Reading needing(List<Input> inputs, Function<Geometry, Reading> formula) {
        for (Input input : inputs) {
            if (!bike.has(input)) {
                return Reading.lacking(BikeGroups.missingWords(bike, inputs));
            }
        }
        return formula.apply(this);
    }

    private Foot solveFoot() {
        return Foot.of(bike, side);
    }
}
