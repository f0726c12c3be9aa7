package rakeline.geometry.toe;

import java.util.Optional;

/** Room between the toe of a shoe and the turned front tyre or its guard. Each number is worked out when asked for. */
public final class ToeClearance {
    private static final double TOUCHING = 0;

    private final FrontWheel wheel;
    private final Toe toe;
    private final SweptRing ring;
    private final GapField gap;

    public ToeClearance(FrontWheel wheel, Pedals pedals, Shoe shoe) {
        this.wheel = wheel;
        this.toe = Toe.of(shoe, pedals, wheel);
        this.ring = SweptRing.of(wheel);
        this.gap = new GapField(toe);
    }

    /**
     * How far the shoe could be moved straight forward, all else unchanged, before it first touches tyre or guard,
     * coming from far behind: least over the steering and crank angles, mm; negative: how far back it would have to go
     * to clear. Nothing where it passes by at every angle. The rear half of the crank's turn lies straight behind the
     * front half, so the crank angle is in −90..90°.
     */
    public Optional<Place> toeRoom() {
        return Room.least(wheel, toe);
    }

    /**
     * The true distance from toe to tyre or guard, mm: least over the steering angles and the whole turn of the crank;
     * 0 where they overlap, and then the place is where they first touch.
     */
    public Place toeGapLeast() {
        Spot nearest = nearest();
        return nearest.value() > TOUCHING ? ring.place(nearest, gap) : touching(firstTouch(nearest));
    }

    /** The true distance from toe to tyre or guard, steering straight, least over the whole turn of the crank, mm. */
    public double toeGapStraightMm() {
        return Math.max(TOUCHING, new LeastSearch(ring, gap, TOUCHING).at(0).value());
    }

    /** The smallest steering angle at which toe and tyre or guard touch; nothing where they never do. */
    public Optional<Touch> toeContact() {
        Spot nearest = nearest();
        return nearest.value() > TOUCHING ? Optional.empty() : Optional.of(firstTouch(nearest));
    }

    private static Place touching(Touch touch) {
        return new Place(TOUCHING, touch.steerDeg(), touch.crankDeg());
    }

    private Spot nearest() {
        return new LeastSearch(ring, gap, TOUCHING).over(0, wheel.steeringLimit());
    }

    private Touch firstTouch(Spot touching) {
        double steer = new TouchSearch(ring, gap).before(touching);
        Place place = ring.place(new LeastSearch(ring, gap).at(steer), gap);
        return new Touch(place.steerDeg(), place.crankDeg());
    }
}
