package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Roots;
import rakeline.figure.BikeDrawing;
import rakeline.figure.Chart;
import rakeline.handling.Ride;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Unit;

class GripTest {
    private static final Rectangle2D AREA = new Rectangle2D.Double(10, 20, 900, 600);
    private static final String ROAD_XS = "demo-data/bikes/road-xs.bike.json";

    private static ChartPainter chart(double here) {
        Quantity x =
                Quantity.of("frame.headAngleDeg", "Head angle", Unit.DEGREE, "").declared();
        Quantity trail = Quantity.of("trailMm", "Trail", Unit.MILLIMETRE, "").declared();
        Numbers steps = Numbers.of(69, 70, 71, 72);
        Chart chart =
                new Chart("", x, steps, here, List.of(new Chart.Panel(trail, steps, here)), List.of(), "", List.of());
        return (ChartPainter) FigurePainter.of(chart, Palette.LIGHT, 1);
    }

    private static List<Grip> grips() {
        Ride ride = Ride.of(BikeFile.read(Roots.bundled().read(ROAD_XS, BikeFile.SIZE_LIMIT), ROAD_XS));
        DrawingPainter painter =
                (DrawingPainter) FigurePainter.of(BikeDrawing.sideView(List.of(ride)), Palette.LIGHT, 1);
        return painter.grips(AREA);
    }

    private static Grip grip(String key) {
        return grips().stream()
                .filter(grip -> grip.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theLineThroughAChartIsHeldWhereItsValueIs() {
        Grip grip = chart(70.5).grip(AREA, View.WHOLE).orElseThrow();
        assertThat(chart(70.5).valueAt(AREA, View.WHOLE, grip.at().getX())).isCloseTo(70.5, within(1e-9));
    }

    @Test
    void aMoveToAPlaceGivesTheValueThere() {
        Grip grip = chart(70.5).grip(AREA, View.WHOLE).orElseThrow();
        double there = chart(70.5).valueAt(AREA, View.WHOLE, grip.at().getX() + 100);
        assertThat(grip.moved(70.5, 100, 33)).isCloseTo(there, within(1e-9));
    }

    @Test
    void aLineOutOfSightCannotBeHeld() {
        assertThat(chart(70.5).grip(AREA, View.WHOLE.zoomed(71, 72))).isEmpty();
        assertThat(chart(Double.NaN).grip(AREA, View.WHOLE)).isEmpty();
    }

    @Test
    void theEndOfTheStackGoesUpWithTheHand() {
        Grip grip = grip("frame.stackMm");
        assertThat(grip.moved(508, 0, -10)).isGreaterThan(508);
        assertThat(grip.moved(508, 10, 0)).isCloseTo(508, within(1e-9));
    }

    @Test
    void aHandThatGoesFromTheStacksEndToItsFootTakesItAll() {
        Grip stack = grip("frame.stackMm");
        Grip reach = grip("frame.reachMm");
        assertThat(stack.perPxY()).isCloseTo(-reach.perPxX(), within(1e-9));
    }

    @Test
    void anEndIsHeldWithinReachAlone() {
        Grip grip = grip("frame.stackMm");
        Point2D near = new Point2D.Double(grip.at().getX() + 3, grip.at().getY() + 3);
        Point2D far = new Point2D.Double(grip.at().getX() + 30, grip.at().getY());
        assertThat(grip.isNear(near, 7)).isTrue();
        assertThat(grip.isNear(far, 7)).isFalse();
    }

    private static Grip handle(String key) {
        return grips().stream()
                .filter(grip -> grip.key().equals(key) && !Double.isNaN(grip.value()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theEndOfTheSteeringAxisGoesForwardWhereTheHeadAngleGetsSlacker() {
        Grip grip = handle("frame.headAngleDeg");
        assertThat(grip.moved(grip.value(), 10, 0)).isLessThan(grip.value());
        assertThat(grip.moved(grip.value(), 0, 10)).isCloseTo(grip.value(), within(1e-9));
    }

    @Test
    void theFrontAxleGoesForwardByTheOffsetOverTheSineOfTheHeadAngle() {
        // D: at one height over ground the axle lies f / sin α ahead of the steering axis
        Grip grip = handle("fork.offsetMm");
        double mmPerPx = Math.abs(grip("frame.reachMm").perPxX());
        double sine = Math.sin(Math.toRadians(handle("frame.headAngleDeg").value()));
        assertThat(grip.perPxX()).isCloseTo(mmPerPx * sine, within(1e-4));
    }

    @Test
    void stemSaddleCrankAndSpacersHaveHandlesToo() {
        assertThat(grips().stream().filter(grip -> !Double.isNaN(grip.value())).map(Grip::key))
                .contains(
                        "cockpit.stemLengthMm",
                        "cockpit.stemAngleDeg",
                        "cockpit.spacersMm",
                        "contact.sitXMm",
                        "contact.sitYMm",
                        "crank.lengthMm",
                        "frame.seatAngleDeg");
    }

    @Test
    void anArrowAcrossTheWayOfAHandleHasNoSenseOfItsOwn() {
        Grip grip = handle("crank.lengthMm");
        assertThat(grip.sense(1, 0)).isEqualTo(1);
        assertThat(grip.sense(-1, 0)).isEqualTo(-1);
        assertThat(grip.sense(0, 1)).isZero();
    }
}
