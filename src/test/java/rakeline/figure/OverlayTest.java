package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Roots;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Dimension;
import rakeline.handling.Ride;

/** Where bikes lie that are laid over each other, and what is dimensioned; places from the definitions of the side view. */
class OverlayTest {
    private final Ride small = ride("road-xs");
    private final Ride large = ride("gravel-l");

    private static Ride ride(String name) {
        String path = "demo-data/bikes/" + name + ".bike.json";
        return Ride.of(BikeFile.read(Roots.bundled().read(path, BikeFile.SIZE_LIMIT), path));
    }

    /** The rear wheel is the first circle of a bike. */
    private Circle rearWheel(BikeDrawing.At at, int overlay) {
        return BikeDrawing.sideView(List.of(small, large), at).marks().stream()
                .filter(Circle.class::isInstance)
                .map(Circle.class::cast)
                .filter(circle -> circle.overlay() == overlay)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void atTheBottomBracketEachWheelStandsWhereItsOwnNumbersPutIt() {
        assertThat(rearWheel(BikeDrawing.At.BB, 1).centre().x())
                .isCloseTo(large.geometry().side().rearAxleXMm(), within(1e-9));
    }

    @Test
    void atTheRearAxleTheAxlesAreOne() {
        assertThat(rearWheel(BikeDrawing.At.REAR_AXLE, 1).centre())
                .isEqualTo(rearWheel(BikeDrawing.At.REAR_AXLE, 0).centre());
    }

    @Test
    void atTheGroundBothWheelsStandOnOneLine() {
        Circle one = rearWheel(BikeDrawing.At.GROUND, 0);
        Circle other = rearWheel(BikeDrawing.At.GROUND, 1);
        assertThat(other.centre().y() - other.radius()).isCloseTo(one.centre().y() - one.radius(), within(1e-9));
    }

    @Test
    void whatALaidOverDrawingSharesIsSaid() {
        assertThat(BikeDrawing.sideView(List.of(small, large), BikeDrawing.At.REAR_AXLE)
                        .held())
                .isEqualTo("laid over each other at the rear axle.");
    }

    @Test
    void everyDimensionThatTheNumbersGiveIsDrawn() {
        assertThat(BikeDrawing.sideView(List.of(small)).marks().stream()
                        .filter(Dimension.class::isInstance)
                        .map(mark -> ((Dimension) mark).key()))
                .containsExactlyInAnyOrder(
                        "trailMm",
                        "frontCentreXMm",
                        "wheelbaseMm",
                        "frame.stackMm",
                        "frame.reachMm",
                        "barXMm",
                        "barYMm",
                        "saddleSetbackMm",
                        "contact.sitYMm",
                        "standoverMm");
    }

    @Test
    void aPlanViewSaysTheRoomAndWhereItIsLeast() {
        assertThat(BikeDrawing.planView(small, 15).marks().stream()
                        .filter(Drawing.Label.class::isInstance)
                        .map(mark -> ((Drawing.Label) mark).text()))
                .anyMatch(text -> text.matches(
                        "least toe room with the bar turned [\\d.]+°; toe and tyre first touch at [\\d.]+°"))
                .contains("turned 15.0°");
    }

    @Test
    void aPlanViewDrawsTheRoomToScale() {
        Drawing.Dimension room = BikeDrawing.planView(small, 15).marks().stream()
                .filter(Drawing.Dimension.class::isInstance)
                .map(Drawing.Dimension.class::cast)
                .findFirst()
                .orElseThrow();
        double drawn = room.to().x() - room.from().x();
        assertThat(room.text())
                .isEqualTo("toe room "
                        + rakeline.geometry.ToeMeasures.TOE_ROOM.quantity().formatWithUnit(drawn));
    }
}
