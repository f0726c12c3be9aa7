package rakeline.geometry;

import java.util.Optional;
import rakeline.geometry.toe.FrontWheel;
import rakeline.geometry.toe.PedalClearance;
import rakeline.geometry.toe.PedalStrike;
import rakeline.geometry.toe.Pedals;
import rakeline.geometry.toe.Place;
import rakeline.geometry.toe.Shoe;
import rakeline.geometry.toe.ToeClearance;
import rakeline.geometry.toe.Touch;
import rakeline.quantity.Lazy;

/** Foot, pedal and turned front wheel of one bike; each number is solved once, when it is first asked for. */
final class Foot {
    private final Lazy<Optional<Place>> pedalToTyre;
    private final Lazy<Optional<Place>> pedalToTyreLevel;
    private final Lazy<Optional<Place>> toeRoom;
    private final Lazy<Place> toeGapLeast;
    private final Lazy<Optional<Touch>> toeContact;
    private final ToeClearance toe;
    private final PedalStrike strike;
    private final Parts parts;

    /** Wheel, pedals and shoe as they stand: all that the numbers of the toe follow from. */
    private record Parts(FrontWheel wheel, Pedals pedals, Shoe shoe, PedalStrike strike) {}

    private Foot(Parts parts) {
        PedalClearance pedal = new PedalClearance(parts.wheel(), parts.pedals());
        ToeClearance toe = new ToeClearance(parts.wheel(), parts.pedals(), parts.shoe());
        this.parts = parts;
        this.pedalToTyre = Lazy.of(pedal::pedalToTyre);
        this.pedalToTyreLevel = Lazy.of(pedal::pedalToTyreLevel);
        this.toeRoom = Lazy.of(toe::toeRoom);
        this.toeGapLeast = Lazy.of(toe::toeGapLeast);
        this.toeContact = Lazy.of(toe::toeContact);
        this.toe = toe;
        this.strike = parts.strike();
    }

    /** For a bike with cranks; the numbers of the toe have a meaning only where there is a shoe. */
    static Foot of(Bike bike, SideView side) {
        FrontWheel wheel = wheel(bike, side);
        Pedals pedals = new Pedals(bike.get(Inputs.CRANK_LENGTH), bike.get(Inputs.STANCE_WIDTH));
        return new Foot(new Parts(wheel, pedals, shoe(bike), strike(bike, side)));
    }

    /** The other where it is the same, with what was solved there; else this one. */
    Foot orSame(Foot other) {
        return parts.equals(other.parts) ? other : this;
    }

    Optional<Place> pedalToTyre() {
        return pedalToTyre.get();
    }

    Optional<Place> pedalToTyreLevel() {
        return pedalToTyreLevel.get();
    }

    Optional<Place> toeRoom() {
        return toeRoom.get();
    }

    Optional<Place> toeGapLeast() {
        return Optional.of(toeGapLeast.get());
    }

    double toeGapStraightMm() {
        return toe.toeGapStraightMm();
    }

    Optional<Touch> toeContact() {
        return toeContact.get();
    }

    PedalStrike pedalStrike() {
        return strike;
    }

    private static FrontWheel wheel(Bike bike, SideView side) {
        return new FrontWheel(
                bike.get(Inputs.HEAD_ANGLE),
                side.frontAxleXMm(),
                side.frontAxleYMm(),
                side.offsetMm(),
                side.frontRadiusMm(),
                bike.get(Inputs.FRONT_TYRE),
                bike.has(Inputs.MUDGUARD_GAP) ? bike.get(Inputs.MUDGUARD_GAP) : 0,
                bike.get(Inputs.STEERING_LIMIT));
    }

    private static Shoe shoe(Bike bike) {
        return new Shoe(
                bike.get(Inputs.TOE_FORWARD),
                bike.get(Inputs.TOE_HEIGHT),
                bike.get(Inputs.TOE_RADIUS),
                bike.get(Inputs.TOE_HALF_WIDTH),
                bike.get(Inputs.TOE_OUT),
                bike.get(Inputs.SHOE_PITCH));
    }

    private static PedalStrike strike(Bike bike, SideView side) {
        double height = side.bbHeightMm() - bike.get(Inputs.CRANK_LENGTH) - bike.get(Inputs.PEDAL_HALF_THICKNESS);
        double section = PedalStrike.sectionRadiusMm(
                bike.get(Inputs.REAR_TYRE) / 2,
                bike.get(Inputs.FRONT_TYRE) / 2,
                -side.rearAxleXMm(),
                side.wheelbaseMm());
        return new PedalStrike(height, bike.get(Inputs.STANCE_WIDTH) / 2 + bike.get(Inputs.PEDAL_HALF_WIDTH), section);
    }
}
