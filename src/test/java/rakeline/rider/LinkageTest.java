package rakeline.rider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rakeline.geometry.Point;
import rakeline.quantity.Entries;

/** Two rods, legs and trunk against closed forms (D). */
class LinkageTest {
    private static final Point ORIGIN = new Point(0, 0);

    private static Rider rider() {
        return Rider.of(
                "One",
                Entries.none()
                        .with(Map.of(RiderInputs.STATURE, 1780.0, RiderInputs.INSEAM, 845.0, RiderInputs.MASS, 78.0)),
                BodyTable.CADAVERS_1955,
                Map.of());
    }

    @Test
    void rodsOfThreeAndFourCloseAtARightAngleOverFive() {
        TwoLinks rods = new TwoLinks(ORIGIN, new Point(5, 0), 3, 4);
        assertThat(Math.toDegrees(rods.includedRad())).isCloseTo(90, within(1e-9));
    }

    @Test
    void theJointLiesAtTheLengthOfBothRods() {
        TwoLinks rods = new TwoLinks(ORIGIN, new Point(5, 0), 3, 4);
        assertThat(rods.left().x()).isCloseTo(1.8, within(1e-9));
        assertThat(rods.left().y()).isCloseTo(2.4, within(1e-9));
    }

    @Test
    void rodsThatAreTooShortMissByTheRest() {
        assertThat(new TwoLinks(ORIGIN, new Point(10, 0), 3, 4).missMm()).isEqualTo(3);
    }

    @Test
    void rodsThatAreTooUnlikeMissByTheRest() {
        assertThat(new TwoLinks(ORIGIN, new Point(0.5, 0), 3, 4).missMm()).isEqualTo(-0.5);
    }

    @Test
    void theKneeIsAheadOfTheLineFromHipToAnkle() {
        Legs legs = Legs.of(rider(), new Point(-220, 770), 170, rider().get(RiderInputs.ANKLE_HEIGHT));
        assertThat(legs.knee(0).x()).isGreaterThan(legs.ankle(0).x());
    }

    @Test
    void theLeastKneeFlexionIsTheLeastOfAllCrankAngles() {
        Legs legs = Legs.of(rider(), new Point(-220, 770), 170, rider().get(RiderInputs.ANKLE_HEIGHT));
        double least = 180;
        for (int i = 0; i < 36_000; i++) {
            least = Math.min(least, legs.kneeFlexionDeg(Math.toRadians(i / 100.0)));
        }
        assertThat(legs.kneeFlexionLeastDeg()).isCloseTo(least, within(1e-4));
    }

    @Test
    void theHighestThighIsTheHighestOfAllCrankAngles() {
        Legs legs = Legs.of(rider(), new Point(-220, 770), 170, rider().get(RiderInputs.ANKLE_HEIGHT));
        double most = -9;
        for (int i = 0; i < 36_000; i++) {
            most = Math.max(most, legs.thighRad(Math.toRadians(i / 100.0)));
        }
        assertThat(legs.thighHighestRad()).isCloseTo(most, within(1e-7));
    }

    @Test
    void legsThatAreTooShortSayByHowMuch() {
        Legs legs = new Legs(new Point(0, 900), new Point(0, 100), 170, 450, 450);
        assertThat(legs.miss()).isEqualTo("the legs are 70.0 mm too short to turn the cranks");
    }

    @Test
    void legsThatCannotFoldSayByHowMuch() {
        Legs legs = new Legs(new Point(0, 500), new Point(0, 100), 170, 550, 250);
        assertThat(legs.miss()).startsWith("the legs cannot fold").contains("70.0 mm");
    }

    @Test
    void aHandOutOfReachNamesTheArmsAndTheMillimetres() {
        Torso torso = new Torso(ORIGIN, new Point(1130, 0), 500, 300, 300, 250, 0);
        assertThat(torso.miss()).startsWith("the arms are 30.0 mm too short to reach the hand point");
    }

    @Test
    void aBentElbowShortensTheArmByTheLawOfCosines() {
        Torso torso = new Torso(ORIGIN, new Point(600, 0), 500, 300, 300, 250, Math.PI / 2);
        assertThat(torso.armMm()).isCloseTo(300 * Math.sqrt(2), within(1e-9));
    }

    @Test
    void elbowsOf15And165AreTheSame() {
        Point grip = new Point(600, -100);
        double one = Torso.of(rider().with(RiderInputs.ELBOW, 15), ORIGIN, grip).angleRad();
        double other =
                Torso.of(rider().with(RiderInputs.ELBOW, 165), ORIGIN, grip).angleRad();
        assertThat(one).isCloseTo(other, within(1e-12));
    }

    @Test
    void theElbowHangsBelowTheLineFromShoulderToGrip() {
        Torso torso = Torso.of(rider(), new Point(-220, 770), new Point(580, 620));
        Point along = torso.grip().minus(torso.shoulder());
        Point elbow = torso.elbow().minus(torso.shoulder());
        assertThat(along.x() * elbow.y() - along.y() * elbow.x()).isNegative();
    }

    @Test
    void scalingEveryLengthLeavesTheAngles() {
        Legs small = new Legs(new Point(-200, 700), new Point(-180, 120), 165, 430, 440);
        Legs large = new Legs(new Point(-300, 1050), new Point(-270, 180), 247.5, 645, 660);
        assertThat(large.kneeFlexionDeg(-1.2)).isCloseTo(small.kneeFlexionDeg(-1.2), within(1e-9));
    }

    @Test
    void theThighAtItsHighestIsThatOfAFineGrid() {
        // D: the law of cosines in hip, knee and ankle; the knee ahead
        for (double hipX : new double[] {-300, -220, -140, 60}) {
            Legs legs = Legs.of(rider(), new Point(hipX, 770), 170, rider().get(RiderInputs.ANKLE_HEIGHT));
            double most = IntStream.range(0, 100_000)
                    .mapToDouble(i -> thigh(legs, i * 2 * Math.PI / 100_000))
                    .max()
                    .orElseThrow();
            assertThat(legs.thighHighestRad()).isCloseTo(most, within(1e-8));
        }
    }

    private static double thigh(Legs legs, double crank) {
        double x = legs.crankMm() * Math.cos(crank)
                + legs.ankleFromPedal().x()
                - legs.hip().x();
        double y = legs.crankMm() * Math.sin(crank)
                + legs.ankleFromPedal().y()
                - legs.hip().y();
        double reach = Math.hypot(x, y);
        double bend = Math.acos((legs.thighMm() * legs.thighMm() + reach * reach - legs.shankMm() * legs.shankMm())
                / (2 * legs.thighMm() * reach));
        return Math.atan2(y, x) + bend;
    }
}
