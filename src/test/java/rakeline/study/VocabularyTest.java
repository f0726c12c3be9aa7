package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.figure.Csv;
import rakeline.figure.MeasureTable;
import rakeline.figure.SweepChart;
import rakeline.geometry.Bikes;
import rakeline.geometry.ContactMeasures;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Setting;
import rakeline.geometry.ToeMeasures;
import rakeline.handling.HandlingMeasures;
import rakeline.handling.Ride;
import rakeline.quantity.Declared;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Refusal;
import rakeline.quantity.Unit;
import rakeline.rider.RiderMeasures;

/** Every number is declared once, and whatever names it reads the declaration. */
class VocabularyTest {
    private static final Vocabulary WITH_FIXTURE = Vocabulary.standard().and(Fixture.class, Ride::geometry);

    static Stream<Quantity> quantities() {
        return Stream.concat(
                Inputs.all().stream().map(Input::quantity),
                Vocabulary.standard().measures().values().stream().map(Measure::quantity));
    }

    @Test
    void aDeclaredMeasureIsReadFromABike() {
        assertThat(WITH_FIXTURE
                        .readings(Ride.of(Bikes.plain()))
                        .get(Fixture.KEY)
                        .orNaN())
                .isCloseTo(100 * 515 / 366.0, within(1e-9));
    }

    @Test
    void aDeclaredMeasureIsARowOfTheMeasureTable() {
        assertThat(MeasureTable.of(WITH_FIXTURE, List.of(Ride.of(Bikes.plain())))
                        .columns()
                        .get(0)
                        .shown())
                .contains("Stack over reach");
    }

    @Test
    void aDeclaredMeasureIsAColumnOfASweepsCsv() {
        String csv = Csv.write(SweepChart.of(sweepOfFixture()));
        assertThat(csv.lines().findFirst().orElseThrow()).isEqualTo("frame.stackMm," + Fixture.KEY);
    }

    @Test
    void aDeclaredMeasureHeadsAColumnOfASweepsTable() {
        assertThat(SweepChart.of(sweepOfFixture()).table().columns().get(1).heading())
                .isEqualTo("Stack over reach, %");
    }

    @Test
    void aDeclaredMeasureLabelsAnAxis() {
        assertThat(SweepChart.of(sweepOfFixture()).panels().get(0).quantity().heading())
                .isEqualTo("Stack over reach, %");
    }

    @Test
    void aDeclaredMeasureIsTheNearestToItsMisspelling() {
        assertThatThrownBy(() -> WITH_FIXTURE.tracked("stackOverReechPercent"))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll("stackOverReechPercent", Fixture.KEY);
    }

    @Test
    void aDeclaredMeasureHasTheNameOfItsConstant() {
        assertThat(WITH_FIXTURE.constants()).containsEntry("STACK_OVER_REACH", Fixture.KEY);
    }

    @Test
    void theStandardVocabularyDoesNotKnowTheFixture() {
        assertThatThrownBy(() -> Vocabulary.standard().measure(Fixture.KEY)).isInstanceOf(Refusal.class);
    }

    @Test
    void namesOfConstantsAreUnique() {
        int declared = Inputs.all().size()
                + Declared.listIn(Measures.class, Measure.class).size()
                + Declared.listIn(ToeMeasures.class, Measure.class).size()
                + Declared.listIn(ContactMeasures.class, Measure.class).size()
                + Declared.listIn(RiderMeasures.class, Measure.class).size()
                + Declared.listIn(HandlingMeasures.class, Measure.class).size();
        assertThat(Vocabulary.standard().constants()).hasSize(declared);
    }

    @Test
    void keysAreUnique() {
        List<String> keys = quantities().map(Quantity::key).toList();
        assertThat(new TreeSet<>(keys)).hasSameSizeAs(keys);
    }

    @ParameterizedTest
    @MethodSource("quantities")
    void aKeyEndsInItsUnit(Quantity quantity) {
        Set<String> suffixes = switch (quantity.unit()) {
            case MILLIMETRE, MILLIMETRE_PER_DEGREE -> Set.of("Mm");
            case METRE -> Set.of("M");
            case DEGREE -> Set.of("Deg");
            case PERCENT -> Set.of("Percent");
            case KILOMETRE_PER_HOUR -> Set.of("Kmh");
            case PER_SQUARE_METRE -> Set.of("PerM2");
            case KILOGRAM -> Set.of("Kg");
            case KILOGRAM_SQUARE_METRE -> Set.of("KgM2");
            case METRE_PER_SECOND -> Set.of("Mps");
            case PER_SECOND -> Set.of("PerS");
            case RADIAN_PER_SECOND -> Set.of("PerS");
            case DEGREE_PER_NEWTON_METRE -> Set.of("DegPerNm");
            case SECOND -> Set.of("S");
            case NEWTON -> Set.of("N");
            case NEWTON_METRE -> Set.of("Nm");
            case NEWTON_METRE_PER_RADIAN -> Set.of("NmPerRad");
        };
        assertThat(suffixes).anyMatch(quantity.key()::endsWith);
    }

    @ParameterizedTest
    @MethodSource("quantities")
    void everyNumberHasALabelAndADefinition(Quantity quantity) {
        assertThat(quantity.label()).isNotBlank();
        assertThat(quantity.definition()).isNotBlank();
        assertThat(quantity.unit()).isNotNull();
    }

    @ParameterizedTest
    @MethodSource("quantities")
    void everyLimitHasALabelAndASource(Quantity quantity) {
        assertThat(quantity.limits()).allSatisfy(limit -> {
            assertThat(limit.label()).isNotBlank();
            assertThat(limit.source()).isNotBlank();
        });
    }

    @Test
    void everyInputHasARange() {
        assertThat(Inputs.all())
                .allSatisfy(
                        input -> assertThat(input.quantity().accepted().to()).isFinite());
    }

    @Test
    void toeAndPedalNumbersCarryTheirCaution() {
        assertThat(Declared.listIn(ToeMeasures.class, Measure.class))
                .allSatisfy(measure -> assertThat(measure.quantity().cautions())
                        .anyMatch(caution -> caution.sentence().contains("throw a rider")));
    }

    @Test
    void anInputCanBeTracked() {
        assertThat(Vocabulary.standard()
                        .tracked("wheels.both.tyreMm")
                        .read(Ride.of(Bikes.plain()))
                        .orNaN())
                .isEqualTo(28);
    }

    @Test
    void anInputThatIsNotGivenIsLacking() {
        assertThat(Vocabulary.standard()
                        .tracked("crank.lengthMm")
                        .read(Ride.of(Bikes.plain()))
                        .reason())
                .contains("crank length");
    }

    @Test
    void handTravelIsGivenPerDegreeAndNotPerMillimetre() {
        assertThat(Measures.TURN_PER_HAND_TRAVEL.quantity().unit()).isEqualTo(Unit.PER_SQUARE_METRE);
    }

    private static Swept sweepOfFixture() {
        return new Sweep(
                        Ride.of(Bikes.plain()),
                        Setting.of("frame.stackMm"),
                        Steps.of(500, 520, 10),
                        Mode.REDRAW,
                        Optional.empty(),
                        List.of(WITH_FIXTURE.tracked(Fixture.KEY)))
                .run();
    }
}
