package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Path;
import rakeline.figure.Drawing.Point;
import rakeline.geometry.Bikes;
import rakeline.handling.Ride;

/** Drawings are the geometry, to scale. */
class BikeDrawingTest {
    private static final Ride WHOLE = Ride.of(Bikes.whole());

    @Test
    void theWheelsAreDrawnAtTheirAxlesWithTheirRadii() {
        Circle front = wheels(BikeDrawing.sideView(List.of(WHOLE))).get(1);
        assertThat(front.centre().x()).isEqualTo(WHOLE.geometry().side().frontAxleXMm());
        assertThat(front.radius()).isEqualTo(WHOLE.geometry().side().frontRadiusMm());
    }

    @Test
    void aDimensionIsAsLongAsItSays() {
        Dimension wheelbase = dimensions(BikeDrawing.sideView(List.of(WHOLE)))
                .filter(dimension -> dimension.key().equals("wheelbaseMm"))
                .findFirst()
                .orElseThrow();
        assertThat(wheelbase.to().x() - wheelbase.from().x())
                .isCloseTo(WHOLE.geometry().side().wheelbaseMm(), within(1e-9));
        assertThat(wheelbase.text()).startsWith("wheelbase ");
    }

    @Test
    void everyBikeIsALayerOfItsOwnAndTheFirstCarriesTheDimensions() {
        Drawing two = BikeDrawing.sideView(List.of(WHOLE, Ride.of(Bikes.plain())));
        assertThat(two.marks()).extracting(Drawing.Mark::overlay).contains(0, 1);
        assertThat(dimensions(two)).extracting(Dimension::overlay).containsOnly(0);
    }

    @Test
    void everyLayerBearsTheNameOfItsBike() {
        Drawing two = BikeDrawing.sideView(List.of(WHOLE, Ride.of(Bikes.plain())));
        assertThat(two.layers())
                .containsExactly(WHOLE.bike().name(), Bikes.plain().name());
    }

    @Test
    void aBikeOfFrameForkAndWheelsAloneCanBeDrawn() {
        assertThat(BikeDrawing.sideView(List.of(Ride.of(Bikes.plain()))).marks())
                .isNotEmpty();
    }

    @Test
    void fromAboveTheTurnedWheelLeansTowardTheFootOnTheOtherSide() {
        Path turned = tyres(BikeDrawing.planView(WHOLE, 20)).get(1);
        Point rearmost = extreme(turned, Comparator.comparingDouble(Point::x));
        Point foremost = extreme(turned, Comparator.comparingDouble(Point::x).reversed());
        assertThat(rearmost.y()).isNegative();
        assertThat(foremost.y()).isPositive();
    }

    @Test
    void fromAboveTheStraightWheelIsAsLongAsItsDiameterAndAsWideAsItsTube() {
        Path straight =
                tyres(BikeDrawing.planView(Ride.of(Bikes.withFoot()), 20)).get(0);
        assertThat(span(straight, Comparator.comparingDouble(Point::x), true)).isCloseTo(678, within(1e-6));
        assertThat(span(straight, Comparator.comparingDouble(Point::y), false)).isCloseTo(28, within(1e-6));
    }

    private static double span(Path path, Comparator<Point> by, boolean along) {
        Point low = extreme(path, by);
        Point high = extreme(path, by.reversed());
        return along ? high.x() - low.x() : high.y() - low.y();
    }

    private static Point extreme(Path path, Comparator<Point> by) {
        return path.points().stream().min(by).orElseThrow();
    }

    private static List<Path> tyres(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .limit(2)
                .toList();
    }

    private static List<Circle> wheels(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Circle.class::isInstance)
                .map(Circle.class::cast)
                .filter(circle -> circle.radius() > 330)
                .toList();
    }

    private static Stream<Dimension> dimensions(Drawing drawing) {
        return drawing.marks().stream().filter(Dimension.class::isInstance).map(Dimension.class::cast);
    }
}
