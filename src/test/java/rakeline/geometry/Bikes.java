package rakeline.geometry;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rakeline.quantity.Entries;
import rakeline.quantity.Measure;

/** Bicycles for tests, written by the keys of a bike file. */
public final class Bikes {
    private Bikes() {}

    /** Frame, fork and wheels alone. */
    public static Bike plain() {
        return of(Map.of(
                "frame.stackMm", 515.0,
                "frame.reachMm", 366.0,
                "frame.headAngleDeg", 70.5,
                "frame.seatAngleDeg", 74.0,
                "frame.chainstayMm", 410.0,
                "frame.bbDropMm", 74.0,
                "fork.offsetMm", 47.0,
                "wheels.both.beadSeatMm", 622.0,
                "wheels.both.tyreMm", 28.0));
    }

    /** With cranks of 165 mm, stance 230 mm and the shoe of the defaults. */
    public static Bike withFoot() {
        Bike bike = redrawn(plain(), Map.of("crank.lengthMm", 165.0, "crank.stanceWidthMm", 230.0));
        return redrawn(
                bike,
                Map.of(
                        "shoe.toeForwardMm", 105.0,
                        "shoe.toeHeightMm", 30.0,
                        "shoe.toeRadiusMm", 25.0,
                        "shoe.toeHalfWidthMm", 20.0));
    }

    /** With every group, and every number that can be left out. */
    public static Bike whole() {
        Map<String, Double> numbers = new HashMap<>(Map.of(
                "frame.seatAngleAtMm", 515.0,
                "frame.seatTubeAngleDeg", 73.0,
                "frame.headTubeMm", 102.0,
                "frame.seatTubeMm", 480.0,
                "frame.seatTubeDepthMm", 330.0,
                "frame.straddleXMm", 100.0,
                "frame.topTube.headJunctionMm", 40.0,
                "frame.topTube.seatJunctionMm", 430.0,
                "frame.topTube.diameterMm", 32.0));
        numbers.putAll(Map.of(
                "fork.axleToCrownMm", 377.0,
                "fork.lowerStackMm", 1.0,
                "fork.sagMm", 0.0,
                "fork.steererLengthMm", 190.0,
                "fork.spacerLimitMm", 30.0,
                "fork.steeringLimitDeg", 80.0,
                "wheels.front.mudguardGapMm", 12.0));
        numbers.putAll(Map.of(
                "cockpit.headsetCoverMm", 8.0,
                "cockpit.spacersMm", 15.0,
                "cockpit.stemClampHeightMm", 40.0,
                "cockpit.stemLengthMm", 90.0,
                "cockpit.stemAngleDeg", -6.0));
        numbers.putAll(Map.of(
                "cockpit.bar.widthMm", 400.0,
                "cockpit.bar.hoodForwardMm", 110.0,
                "cockpit.bar.hoodRiseMm", 15.0,
                "cockpit.bar.reachMm", 75.0,
                "cockpit.bar.dropMm", 120.0,
                "cockpit.bar.topsHalfWidthMm", 95.0));
        numbers.putAll(Map.of(
                "contact.sitXMm", -200.0,
                "contact.sitYMm", 660.0,
                "contact.handXMm", 530.0,
                "contact.handYMm", 600.0,
                "seatpost.setbackMm", 15.0,
                "seatpost.lengthMm", 350.0,
                "seatpost.minimumInsertionMm", 80.0));
        numbers.putAll(Map.of(
                "saddle.railTravelMm", 40.0,
                "saddle.sitBehindRailsMm", 25.0,
                "saddle.railToTopMm", 48.0,
                "ride.steerDeg", 12.0,
                "ride.leanDeg", 10.0,
                "ride.speedKmh", 15.0));
        return redrawn(withFoot(), numbers);
    }

    /** The plain bike with another front end; both wheels have the radius. */
    public static Bike front(double headAngleDeg, double radiusMm, double offsetMm) {
        return redrawn(
                plain(),
                Map.of(
                        "frame.headAngleDeg", headAngleDeg,
                        "wheels.both.radiusMm", radiusMm,
                        "fork.offsetMm", offsetMm));
    }

    /** A bike of these numbers alone. */
    public static Bike of(Map<String, Double> numbers) {
        return Bike.of("Fixture", Entries.none().with(Setting.changes(numbers)), Set.of(), Map.of());
    }

    public static Bike redrawn(Bike bike, Map<String, Double> numbers) {
        return bike.redraw(Setting.changes(new TreeMap<>(numbers)));
    }

    /** Moved along x, by its reach, until a measure that grows with the reach has this value. */
    public static Bike reaching(Bike bike, Measure<Geometry> measure, double wanted) {
        return bike.with(Inputs.REACH, bike.get(Inputs.REACH) + wanted - value(bike, measure));
    }

    public static double value(Bike bike, Measure<Geometry> measure) {
        return measure.read(Geometry.of(bike)).orNaN();
    }
}
