package rakeline.prelude;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rakeline.figure.BikeDrawing;
import rakeline.figure.Drawing;
import rakeline.figure.MatchTable;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Hands;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Ride;
import rakeline.quantity.Refusal;
import rakeline.rider.Rider;
import rakeline.rider.SaddleTarget;
import rakeline.study.fit.Match;
import rakeline.study.fit.Matched;
import rakeline.study.fit.Option;
import rakeline.study.fit.Wanted;

/**
 * A match being said, as in {@code match(bike).to(other).with(parts).table()}. Each word returns a new one.
 */
public final class Matching {
    private static final int USUAL = 10;

    private final Bike bike;
    private final Optional<Wanted> wanted;
    private final Bike reference;
    private final Optional<Stock> stock;
    private final Optional<Rider> who;
    private final double toleranceMm;

    private Matching(
            Bike bike,
            Optional<Wanted> wanted,
            Bike reference,
            Optional<Stock> stock,
            Optional<Rider> who,
            double toleranceMm) {
        this.bike = bike;
        this.wanted = wanted;
        this.reference = reference;
        this.stock = stock;
        this.who = who;
        this.toleranceMm = toleranceMm;
    }

    static Matching of(Bike bike) {
        return new Matching(bike, Optional.empty(), bike, Optional.empty(), Optional.empty(), Match.USUAL_TOLERANCE_MM);
    }

    /** The contact points of a bike, or where it has none, its hoods as built; levers are compared with it. */
    public Matching to(Bike other) {
        return new Matching(bike, Optional.of(Wanted.of(other)), other, stock, who, toleranceMm);
    }

    /** A rider's contact points and shoe; levers are compared with the bike as it is. */
    public Matching to(Rider rider) {
        return new Matching(bike, Optional.of(Wanted.of(rider)), bike, stock, Optional.of(rider), toleranceMm);
    }

    /**
     * A rider's contact points and shoe; where the rider does not give the points, those of the bike that is ridden
     * today, with which levers are compared.
     */
    public Matching to(Rider rider, Bike today) {
        return new Matching(bike, Optional.of(Wanted.of(rider, today)), today, stock, Optional.of(rider), toleranceMm);
    }

    /**
     * The parts at hand, as {@code parts(…)} reads them or {@code pick(…, stocks())} offers them; every combination
     * is tried.
     */
    public Matching with(Stock parts) {
        return new Matching(bike, wanted, reference, Optional.of(parts), who, toleranceMm);
    }

    /**
     * Lets the hoods be a little off their place.
     *
     * @param tolerance how far off they may be without counting, mm, from 0 up; 3 unless it is said
     */
    public Matching within(double tolerance) {
        return new Matching(bike, wanted, reference, stock, who, tolerance);
    }

    /** What keeps the saddle's setback on another crank: {@code "bb"}, {@code "pedal"} or {@code "line"}. */
    public Matching setbackFrom(String setback) {
        return holding(before -> new Wanted.Hold(SaddleTarget.Setback.of(setback), before.handsWithSaddle()));
    }

    /** Hands kept from the sit point, not from BB, on another crank. */
    public Matching handsFromSaddle() {
        return holding(before -> new Wanted.Hold(before.setback(), true));
    }

    private Matching holding(UnaryOperator<Wanted.Hold> change) {
        Wanted points = wanted();
        return new Matching(
                bike, Optional.of(points.holding(change.apply(points.hold()))), reference, stock, who, toleranceMm);
    }

    private Wanted wanted() {
        return wanted.orElseThrow(() -> new Refusal("the match does not say to whom; add .to(bike)."));
    }

    /**
     * The ten best options as a table, best first: the parts, how far hands and seat are off in mm, what is left to
     * each limit.
     */
    public Table table() {
        return table(USUAL);
    }

    /**
     * The best options, up to a number of them.
     *
     * @param most how many at most, 1 or more
     */
    public Table table(int most) {
        return MatchTable.brief(best(most));
    }

    /** The frame with the best option on it, parts, saddle and all; named after both. */
    public Bike bike() {
        return best(1).first().named();
    }

    /** The frame with the best option on it, and the rider, if the match is to one. */
    public Ride ride() {
        return Ride.of(bike(), who, Hands.HOODS);
    }

    /**
     * The frames with the best options on them.
     *
     * @param most how many at most, 1 or more
     */
    public List<Bike> bikes(int most) {
        return best(most).options().stream().map(Option::named).toList();
    }

    /** The best option laid over the bike whose points are wanted. */
    public Drawing drawing() {
        return BikeDrawing.sideView(List.of(ride(), Ride.of(reference)));
    }

    /**
     * The best options as values, to go on with in Java.
     *
     * @param most how many at most, 1 or more
     */
    public Matched best(int most) {
        Wanted points = wanted();
        Stock parts =
                stock.orElseThrow(() -> new Refusal("the match does not say with which parts; add .with(parts)."));
        return new Match(bike, points, Geometry.of(reference), parts, toleranceMm).best(most);
    }
}
