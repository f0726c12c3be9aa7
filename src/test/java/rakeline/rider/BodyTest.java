package rakeline.rider;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.RiderFile;
import rakeline.geometry.Bike;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.quantity.Measure;
import rakeline.quantity.Reading;

/** The rider of 178 cm and 78 kg on the middle road bike. */
class BodyTest {
    private static Bike bike() throws IOException {
        return BikeFile.read(Files.readAllBytes(Path.of("demo-data/bikes/road-m.bike.json")), "road-m");
    }

    private static Rider rider() throws IOException {
        return RiderFile.read(Files.readAllBytes(Path.of("demo-data/riders/rider-178.rider.json")), "rider");
    }

    private static Ridden ridden() throws IOException {
        return Ridden.of(bike(), Optional.of(rider()), Hands.HOODS);
    }

    private static double sum(List<BodyPart> body, ToDoubleFunction<BodyPart> each) {
        return body.stream().mapToDouble(each).sum();
    }

    private static double read(Measure<Ridden> measure) throws IOException {
        return measure.read(ridden()).orNaN();
    }

    @ParameterizedTest
    @EnumSource
    void theFractionsOfATableAddUpToOne(BodyTable table) {
        // de Leva 1996 as printed (S) adds up to 0.9999 for women
        assertThat(SegmentMasses.sum(table)).isCloseTo(1, within(2e-4));
    }

    @ParameterizedTest
    @EnumSource
    void thePiecesWeighWhatTheRiderWeighs(BodyTable table) throws IOException {
        Ridden ridden = Ridden.of(bike(), Optional.of(rider().with(table)), Hands.HOODS);
        assertThat(sum(ridden.body(), BodyPart::massKg)).isCloseTo(78, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource
    void theTablesAgreeOnTheMassCentre(BodyTable table) throws IOException {
        // measuring de Leva's trunk from the wrong end would move it 5 cm (D)
        Ridden ridden = Ridden.of(bike(), Optional.of(rider().with(table)), Hands.HOODS);
        assertThat(RiderMeasures.MASS_CENTRE_Y.read(ridden).orNaN())
                .isCloseTo(read(RiderMeasures.MASS_CENTRE_Y), within(25.0));
    }

    @Test
    void armsLieSymmetricallyToEitherSide() throws IOException {
        assertThat(sum(
                        ridden().body().stream()
                                .filter(part -> part.name().endsWith("arm"))
                                .toList(),
                        part -> part.massKg() * part.zMm()))
                .isCloseTo(0, within(1e-9));
    }

    @Test
    void rollPitchAndYawInertiaAreThoseOfARiderOf78Kilograms() throws IOException {
        List<BodyPart> body = ridden().body();
        double x = read(RiderMeasures.MASS_CENTRE_X);
        double y = read(RiderMeasures.MASS_CENTRE_Y);
        double roll = sum(body, part -> part.inertia().roll() + part.massKg() * square(part.yMm() - y, part.zMm()));
        double pitch =
                sum(body, part -> part.inertia().pitch() + part.massKg() * square(part.xMm() - x, part.yMm() - y));
        double yaw = sum(body, part -> part.inertia().yaw() + part.massKg() * square(part.xMm() - x, part.zMm()));
        // near 8, 10.5 and 4 kg m² (CP)
        assertThat(roll).isCloseTo(8, within(1.6));
        assertThat(pitch).isCloseTo(10.5, within(2.1));
        assertThat(yaw).isCloseTo(4, within(1.0));
    }

    @Test
    void theFrontWheelCarriesInTheForties() throws IOException {
        assertThat(read(RiderMeasures.FRONT_SHARE)).isBetween(40.0, 50.0);
    }

    @Test
    void theKneeIsWithinTheMeasuredRange() throws IOException {
        // 36 ± 7, Holliday and Swart 2021 (S)
        assertThat(read(RiderMeasures.KNEE_FLEXION_BOTTOM)).isBetween(29.0, 43.0);
    }

    @Test
    void theSaddleStandsAt0883OfTheInseam() throws IOException {
        // in Peveler et al. 2005 (S)
        assertThat(read(RiderMeasures.SADDLE_HEIGHT_OF_INSEAM)).isCloseTo(88.3, within(0.5));
    }

    @Test
    void theHipAngleIsBetweenTrunkAndThigh() throws IOException {
        Legs legs = ridden().legs().orElseThrow();
        Torso torso = ridden().torso().orElseThrow();
        Point thigh = legs.knee(Math.PI / 2).minus(legs.hip());
        Point trunk = torso.shoulder().minus(torso.hip());
        assertThat(read(RiderMeasures.HIP_ANGLE_AT_TOP)).isCloseTo(between(thigh, trunk), within(1e-9));
    }

    @Test
    void theShoulderAngleIsBetweenTrunkAndUpperArm() throws IOException {
        Torso torso = ridden().torso().orElseThrow();
        Point trunk = torso.hip().minus(torso.shoulder());
        Point arm = torso.elbow().minus(torso.shoulder());
        assertThat(read(RiderMeasures.SHOULDER_ANGLE)).isCloseTo(between(trunk, arm), within(1e-9));
    }

    @Test
    void theTorsoAngleIsBetweenTrunkAndGround() throws IOException {
        Torso torso = ridden().torso().orElseThrow();
        Point trunk = torso.shoulder().minus(torso.hip());
        assertThat(read(RiderMeasures.TORSO_ANGLE)).isCloseTo(between(trunk, new Point(1, 0)), within(1e-9));
    }

    @Test
    void theMeansOfMeasuredRidersDoNotCloseWithAStraightTrunk() throws IOException {
        // knee 36, hip 77, shoulder 112, Holliday and Swart 2021 (S): on this saddle a hip of 77 puts the shoulder
        // where
        // a shoulder of 112 needs a hand point level with it or above, 40 cm above these hoods (D)
        Legs legs = ridden().legs().orElseThrow();
        Torso torso = ridden().torso().orElseThrow();
        double trunk = legs.thighRad(Math.PI / 2) + Math.toRadians(77);
        Point shoulder = legs.hip().plus(new Point(torso.trunkMm(), 0).turned(trunk));
        Point upperArm = new Point(-torso.upperArmMm(), 0).turned(trunk + Math.toRadians(112));
        Point fore = new Point(-torso.foreMm(), 0).turned(trunk + Math.toRadians(112) + torso.elbowBendRad());
        assertThat(shoulder.plus(upperArm).plus(fore).y())
                .isGreaterThan(torso.grip().y() + 400);
    }

    @Test
    void theBicyclesOwnMassesCountInTheShare() throws IOException {
        Ridden heavy = ridden().on(ridden().geometry().bike().with("masses.frontWheel.massKg", 11.2));
        double before = read(RiderMeasures.FRONT_SHARE);
        // ten kilograms more, all of them on the front wheel, with 78 + 9.2 before (D)
        assertThat(RiderMeasures.FRONT_SHARE.read(heavy).orNaN())
                .isCloseTo((before * 87.2 + 100 * 10) / 97.2, within(1e-9));
    }

    @Test
    void withoutARiderARiderIsLacking() throws IOException {
        Ridden alone = Ridden.of(bike(), Optional.empty(), Hands.HOODS);
        assertThat(RiderMeasures.TORSO_ANGLE.read(alone)).isEqualTo(Reading.lacking("a rider"));
    }

    @Test
    void aPostureThatCannotCloseNamesTheLimb() throws IOException {
        Bike high = bike().with(Inputs.CONTACT_SIT_Y, 900);
        Ridden ridden = Ridden.of(bike(), Optional.of(rider()), Hands.HOODS).on(high);
        assertThat(RiderMeasures.KNEE_FLEXION_BOTTOM.read(ridden).reason()).startsWith("the legs are ");
        assertThat(RiderMeasures.MASS_CENTRE_X.read(ridden).reason()).contains("too short to turn the cranks");
    }

    @Test
    void aShorterCrankRaisesTheSaddleAlongItsLine() throws IOException {
        Bike before = ridden().geometry().bike();
        Bike after = new CrankChange(160, false).on(before);
        assertThat(height(after)).isCloseTo(height(before) + 12.5, within(1e-9));
        assertThat(after.get(Inputs.CONTACT_SIT_X) / after.get(Inputs.CONTACT_SIT_Y))
                .isCloseTo(before.get(Inputs.CONTACT_SIT_X) / before.get(Inputs.CONTACT_SIT_Y), within(1e-12));
    }

    @Test
    void handsThatMoveGoWithTheSaddle() throws IOException {
        Ridden before = ridden();
        Ridden after = before.on(new CrankChange(165, true).on(before.geometry().bike()));
        assertThat(RiderMeasures.TORSO_ANGLE.read(after).orNaN())
                .isCloseTo(RiderMeasures.TORSO_ANGLE.read(before).orNaN(), within(1e-9));
    }

    private static double between(Point one, Point other) {
        double dot = one.x() * other.x() + one.y() * other.y();
        return Math.toDegrees(Math.acos(dot / (one.length() * other.length())));
    }

    private static double height(Bike bike) {
        return Math.hypot(bike.get(Inputs.CONTACT_SIT_X), bike.get(Inputs.CONTACT_SIT_Y));
    }

    /** In m² of two distances in mm. */
    private static double square(double one, double other) {
        return (one * one + other * other) / 1e6;
    }

    /** Knees stand midway between hip and foot: a thigh's centre so far out, a shank's from there on to the foot. */
    @Test
    void kneesStandMidwayBetweenHipsAndFeet() throws IOException {
        Ridden ridden = ridden();
        double hip = ridden.rider().orElseThrow().get(RiderInputs.HIP_WIDTH) / 2;
        double foot = bike().get(Inputs.STANCE_WIDTH) / 2;
        double knee = hip + (foot - hip) / 2;
        assertThat(foot).isNotCloseTo(hip, within(5.0));
        assertThat(part(ridden, "right foot").zMm()).isCloseTo(foot, within(1e-9));
        assertThat(alongOf(part(ridden, "right thigh"), hip, knee)).isCloseTo(share(Segment.THIGH), within(1e-9));
        assertThat(alongOf(part(ridden, "right shank"), knee, foot)).isCloseTo(share(Segment.SHANK), within(1e-9));
        assertThat(alongOf(part(ridden, "left thigh"), -hip, -knee)).isCloseTo(share(Segment.THIGH), within(1e-9));
    }

    private static double alongOf(BodyPart part, double from, double to) {
        return (part.zMm() - from) / (to - from);
    }

    private static BodyPart part(Ridden ridden, String name) {
        return ridden.body().stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double share(Segment segment) throws IOException {
        return SegmentMasses.of(rider().table()).stream()
                .filter(spread -> spread.segment() == segment)
                .findFirst()
                .orElseThrow()
                .centre();
    }
}
