package rakeline.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.geometry.MassInputs;
import rakeline.geometry.Measures;
import rakeline.handling.BicycleParameters.Body;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.rider.BodyPart;
import rakeline.rider.BodyPart.Inertia;

/** From a bicycle and pieces of a rider to the four parts of the linear model. */
class MountTest {
    private static final double TIGHT = 1e-9;
    private static final Bike BIKE = Bikes.plain().redraw(Map.of(MassInputs.HAND_SHARE, 40.0));
    private static final List<BodyPart> RIDER = List.of(
            new BodyPart("trunk", 42, 60, 780, 0, new Inertia(2.1, 0.9, 1.9, 0.7)),
            new BodyPart("left forearm", 1.2, 420, 640, -210, new Inertia(0.004, 0.006, 0.007, -0.002)),
            new BodyPart("right forearm", 1.2, 420, 640, 210, new Inertia(0.004, 0.006, 0.007, -0.002)),
            new BodyPart("left hand", 0.4, 540, 590, -200, new Inertia(0.0005, 0.0006, 0.0004, 0.0001)),
            new BodyPart("right hand", 0.4, 540, 590, 200, new Inertia(0.0005, 0.0006, 0.0004, 0.0001)));

    @Test
    void massIsThatOfBicycleAndRider() {
        BicycleParameters bare = mount(List.of()).parameters();
        BicycleParameters ridden = mount(RIDER).parameters();
        assertThat(ridden.frame().mass() + ridden.fork().mass())
                .isCloseTo(bare.frame().mass() + bare.fork().mass() + 45.2, within(TIGHT));
    }

    @Test
    void theBarCarriesItsShareOfForearmsAndHands() {
        assertThat(mount(RIDER).armsOnBarKg()).isCloseTo(0.4 * 3.2, within(TIGHT));
    }

    @Test
    void theCentreOfMassIsWhereItWasWhateverTheBarCarries() {
        double[] some = aboutContact(mount(RIDER).parameters());
        double[] none = aboutContact(Mount.of(
                        Ride.of(BIKE.with(MassInputs.HAND_SHARE, 0)).ridden(), RIDER)
                .parameters());
        assertThat(some).usingComparatorWithPrecision(TIGHT).containsExactly(none);
    }

    /** Moments about the rear contact, summed here over the pieces themselves: nothing is lost on the way. */
    @Test
    void momentsAboutTheRearContactAreThoseOfThePieces() {
        double[] bare = aboutContact(mount(List.of()).parameters());
        double[] pieces = new double[bare.length];
        RIDER.forEach(part -> add(pieces, part));
        double[] all = new double[bare.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = bare[i] + pieces[i];
        }
        assertThat(aboutContact(mount(RIDER).parameters()))
                .usingComparatorWithPrecision(TIGHT)
                .containsExactly(all);
    }

    @Test
    void geometryIsThatOfTheBike() {
        Ride ride = Ride.of(BIKE);
        BicycleParameters parameters = ride.mount().parameters();
        assertThat(parameters.w()).isCloseTo(ride.geometry().side().wheelbaseMm() / 1000, within(TIGHT));
        assertThat(parameters.c()).isCloseTo(ride.geometry().side().trailMm() / 1000, within(TIGHT));
        assertThat(Math.toDegrees(parameters.lambdaRad())).isCloseTo(90 - BIKE.get(Inputs.HEAD_ANGLE), within(TIGHT));
    }

    @Test
    void aGivenMassIsTakenAndSaidToBeGiven() {
        Mount mount = Ride.of(BIKE.with(MassInputs.FRAME_MASS, 5.5)).mount();
        assertThat(mount.used())
                .filteredOn(mass -> mass.quantity().key().equals("masses.frame.massKg"))
                .singleElement()
                .satisfies(mass -> assertThat(mass.given()).isTrue())
                .satisfies(mass -> assertThat(mass.value()).isEqualTo(5.5));
    }

    @Test
    void everyDefaultNamesItsSource() {
        assertThat(Ride.of(Bikes.plain()).mount().used())
                .hasSize(21)
                .allSatisfy(mass -> assertThat(mass.origin()).isNotBlank().isNotEqualTo("given"));
    }

    /** A product of inertia beyond √(roll · yaw), or a flat wheel with more spin than twice a diameter's moment (D). */
    @ParameterizedTest
    @CsvSource({
        "masses.fork.productKgM2, 0.5, fork and bar",
        "masses.frame.productKgM2, 5, the frame",
        "masses.frame.pitchKgM2, 5, the frame",
        "masses.frontWheel.spinKgM2, 0.3, front wheel",
        "masses.rearWheel.diametralKgM2, 0.01, rear wheel"
    })
    void momentsThatNoBodyHasLeaveOutHandlingAlone(String key, double value, String part) {
        Ride ride = Ride.of(BIKE.with(key, value));
        assertThat(ride.massKg().reason()).contains(part).contains("kg m²").doesNotContain("definite");
        assertThat(HandlingMeasures.WEAVE_SPEED.read(ride)).isEqualTo(ride.massKg());
        assertThat(Measures.TRAIL.read(ride.geometry())).isInstanceOf(Reading.Known.class);
        assertThatThrownBy(ride::mount)
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("Fixture cannot be weighed: ");
    }

    /** Specimens A and B, Moore 2012 (S): A's frame is 2 % beyond the sum of two moments, as measured sets are. */
    @Test
    void aMeasuredSetIsTaken() {
        Map<String, Double> frameOfA = Map.of(
                "masses.frame.massKg", 9.86,
                "masses.frame.rollKgM2", 0.530,
                "masses.frame.yawKgM2", 0.757,
                "masses.frame.pitchKgM2", 1.316,
                "masses.frame.productKgM2", -0.116);
        assertThat(Ride.of(Bikes.redrawn(BIKE, frameOfA)).massKg()).isInstanceOf(Reading.Known.class);
    }

    @Test
    void noPartIsWithoutMass() {
        assertThatThrownBy(() -> BIKE.with(MassInputs.FRONT_WHEEL_MASS, 0))
                .isInstanceOf(Refusal.class)
                .hasMessage("Front wheel mass (masses.frontWheel.massKg) is 0 kg; accepted is 0.01..60 kg.");
    }

    private static Mount mount(List<BodyPart> body) {
        return Mount.of(Ride.of(BIKE).ridden(), body);
    }

    /** Mass, first moments and second moments of frame and fork about the rear contact, in the model's axes. */
    private static double[] aboutContact(BicycleParameters p) {
        return Stream.of(p.frame(), p.fork())
                .map(MountTest::aboutContact)
                .reduce(MountTest::sum)
                .orElseThrow();
    }

    private static double[] aboutContact(Body b) {
        double m = b.mass();
        return new double[] {
            m,
            m * b.x(),
            m * b.z(),
            b.ixx() + m * b.z() * b.z(),
            b.iyy() + m * (b.x() * b.x() + b.z() * b.z()),
            b.izz() + m * b.x() * b.x(),
            b.ixz() - m * b.x() * b.z()
        };
    }

    private static double[] sum(double[] one, double[] other) {
        double[] sum = new double[one.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = one[i] + other[i];
        }
        return sum;
    }

    private static void add(double[] sum, BodyPart part) {
        var side = Ride.of(BIKE).geometry().side();
        double m = part.massKg();
        double x = (part.xMm() - side.rearAxleXMm()) / 1000;
        double y = part.zMm() / 1000;
        double z = -(part.yMm() + side.bbHeightMm()) / 1000;
        double[] own = {
            m,
            m * x,
            m * z,
            part.inertia().roll() + m * (y * y + z * z),
            part.inertia().pitch() + m * (x * x + z * z),
            part.inertia().yaw() + m * (x * x + y * y),
            part.inertia().product() - m * x * z
        };
        for (int i = 0; i < own.length; i++) {
            sum[i] += own[i];
        }
    }
}
