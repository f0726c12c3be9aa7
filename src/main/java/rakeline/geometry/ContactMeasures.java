package rakeline.geometry;

import static rakeline.quantity.SourceNote.Part.FORMULA;
import static rakeline.quantity.SourceStanding.DERIVED;
import static rakeline.quantity.Unit.MILLIMETRE;

import java.util.List;
import java.util.function.ToDoubleFunction;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;

/** How far a bike as built misses the contact points that are wanted; each declared once. */
public final class ContactMeasures {
    public static final Measure<Geometry> HAND_MISS_X = hand(
            "handMissXMm",
            "Hands from target, forward",
            "Hoods as built, ahead of the hand point that is wanted.",
            Point::x);
    public static final Measure<Geometry> HAND_MISS_Y = hand(
            "handMissYMm", "Hands from target, up", "Hoods as built, above the hand point that is wanted.", Point::y);
    public static final Measure<Geometry> HAND_MISS =
            hand("handMissMm", "Hands from target", "Hoods as built to the hand point that is wanted.", Point::length);
    public static final Measure<Geometry> SIT_MISS = new Measure<>(
            Quantity.of(
                            "sitMissMm",
                            "Saddle from target",
                            MILLIMETRE,
                            "How far the sit point stays off the one wanted where post and rails stop at their"
                                    + " limits; 0 where they reach it.")
                    .source(FORMULA, DERIVED, "plane geometry")
                    .declared(),
            geometry -> geometry.needing(
                    List.of(Inputs.CONTACT_SIT_X, Inputs.POST_LENGTH, Inputs.RAIL_TRAVEL, Inputs.SEAT_TUBE),
                    ContactMeasures::sitMiss));

    private ContactMeasures() {}

    private static Measure<Geometry> hand(String key, String label, String definition, ToDoubleFunction<Point> read) {
        return new Measure<>(
                Quantity.of(key, label, MILLIMETRE, definition)
                        .source(FORMULA, DERIVED, "plane geometry")
                        .declared(),
                geometry -> geometry.needing(
                        List.of(Inputs.CONTACT_HAND_X, Inputs.STEM_LENGTH, Inputs.BAR_WIDTH),
                        known -> Reading.of(read.applyAsDouble(handMiss(known)))));
    }

    private static Point handMiss(Geometry geometry) {
        Bike bike = geometry.bike();
        HandPoint hoods = HandPoint.of(bike, geometry.side(), geometry.cockpit().orElseThrow(), Hands.HOODS);
        return hoods.at().minus(new Point(bike.get(Inputs.CONTACT_HAND_X), bike.get(Inputs.CONTACT_HAND_Y)));
    }

    private static Reading sitMiss(Geometry geometry) {
        return Reading.of(sitOff(geometry.bike()).length());
    }

    /** From where post and rails can put the saddle to where it is wanted, for a bike with seat tube, post and saddle. */
    public static Point sitOff(Bike bike) {
        SaddlePosition saddle = SaddlePosition.of(bike);
        double half = bike.get(Inputs.RAIL_TRAVEL) / 2;
        double shift = beyond(saddle.railShiftMm(), -half, half);
        double length = bike.get(Inputs.POST_LENGTH);
        double deepest = bike.has(Inputs.SEAT_TUBE_DEPTH) ? length - bike.get(Inputs.SEAT_TUBE_DEPTH) : 0;
        double longest = length - Measures.minimumInsertionMm(bike);
        double slide = beyond(saddle.extensionMm(), Math.max(0, deepest), longest);
        return SeatAxis.of(bike).up().times(slide).plus(new Point(shift, 0));
    }

    /** By how much a value lies outside a range; 0 within. */
    private static double beyond(double value, double from, double to) {
        return value - Math.min(Math.max(value, from), Math.max(from, to));
    }
}
