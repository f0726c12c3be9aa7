package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.HandPoint;
import rakeline.geometry.Hands;
import rakeline.quantity.Entries;
import rakeline.rider.BodyTable;
import rakeline.rider.Ridden;
import rakeline.rider.Rider;
import rakeline.rider.RiderInputs;

/** The rider in a drawing. */
class RiderMarksTest {
    private static final Rider RIDER = Rider.of(
            "Rider",
            Entries.none().with(Map.of(RiderInputs.STATURE, 1680.0, RiderInputs.INSEAM, 790.0, RiderInputs.MASS, 62.0)),
            BodyTable.CADAVERS_1955,
            Map.of());

    private static List<Mark> marks(Bike bike) {
        return RiderMarks.of(Ridden.of(bike, Optional.of(RIDER), Hands.HOODS), 0);
    }

    private static List<Path> paths(Bike bike) {
        return marks(bike).stream()
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .toList();
    }

    @Test
    void twoLegsAndATorsoAreDrawnWithTheirJoints() {
        assertThat(paths(Bikes.whole())).hasSize(3);
        assertThat(marks(Bikes.whole())).filteredOn(Circle.class::isInstance).hasSize(4 + 4 + 5);
    }

    @Test
    void theArmEndsAtTheHoods() {
        HandPoint hoods = Ridden.of(Bikes.whole(), Optional.of(RIDER), Hands.HOODS)
                .geometry()
                .handPoint()
                .orElseThrow();
        List<Drawing.Point> torso = paths(Bikes.whole()).get(2).points();
        assertThat(torso.get(torso.size() - 1).x()).isCloseTo(hoods.at().x(), within(1e-9));
        assertThat(torso.get(torso.size() - 1).y()).isCloseTo(hoods.at().y(), within(1e-9));
    }

    @Test
    void legsThatDoNotCloseAreLeftOut() {
        assertThat(paths(Bikes.whole().with("contact.sitYMm", 900))).hasSize(1);
    }

    @Test
    void withoutARiderNothingIsDrawn() {
        assertThat(RiderMarks.of(Ridden.of(Bikes.whole(), Optional.empty(), Hands.HOODS), 0))
                .isEmpty();
    }
}
