package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.SourceNote;
import rakeline.quantity.SourceNote.Part;
import rakeline.quantity.SourceStanding;
import rakeline.rider.RiderInputs;

/** Every declaration says what it rests on, and whether that was read. */
class SourcesTest {
    static Stream<Input> inputs() {
        return Stream.concat(Inputs.all().stream(), RiderInputs.all().stream());
    }

    static Stream<Quantity> quantities() {
        return Vocabulary.standard().quantities().stream();
    }

    static Stream<Quantity> measures() {
        return Vocabulary.standard().measures().values().stream().map(Measure::quantity);
    }

    @ParameterizedTest
    @MethodSource("inputs")
    void anInputSaysWhereItsMeaningAndItsDefaultComeFrom(Input input) {
        assertThat(parts(input.quantity())).contains(Part.DEFINITION);
        boolean takes = input.presence() instanceof Input.Presence.Defaulted
                || input.presence() instanceof Input.Presence.Derived
                || input.key().startsWith("masses.");
        assertThat(parts(input.quantity()).contains(Part.DEFAULT))
                .as(input.key())
                .isEqualTo(takes);
    }

    @ParameterizedTest
    @MethodSource("measures")
    void aMeasureSaysWhereItsFormulaComesFrom(Quantity measure) {
        assertThat(parts(measure)).contains(Part.FORMULA);
    }

    @ParameterizedTest
    @MethodSource("quantities")
    void limitsAndUncertaintiesHaveASourceAndNothingElseHas(Quantity quantity) {
        assertThat(parts(quantity).contains(Part.LIMIT))
                .isEqualTo(!quantity.limits().isEmpty());
        assertThat(parts(quantity).contains(Part.UNCERTAINTY)).isEqualTo(!Double.isNaN(quantity.uncertaintyOrNaN()));
    }

    @Test
    void bothWheelsRestOnWhatEachRestsOn() {
        assertThat(Setting.of("wheels.both.radiusMm").quantity().sources())
                .isEqualTo(Inputs.FRONT_RADIUS.quantity().sources());
    }

    @Test
    void itIsSaidInWordsWhetherASourceWasRead() {
        assertThat(Inputs.HEAD_ANGLE.quantity().facts())
                .contains(
                        "Sources: definition: common practice; uncertainty: digital level, Moore 2012, chapter Physical"
                                + " Parameters, read in the source; limits: ISO 4210-2:2015 Annex A, read in a secondary copy.");
    }

    /** Where no source is named, the standing has to say all. */
    @ParameterizedTest
    @MethodSource("quantities")
    void whatWasReadIsNamed(Quantity quantity) {
        assertThat(quantity.sources())
                .filteredOn(note -> note.standing() != SourceStanding.PRACTICE)
                .allSatisfy(note -> assertThat(note.text()).isNotBlank());
    }

    private static List<Part> parts(Quantity quantity) {
        return quantity.sources().stream().map(SourceNote::part).toList();
    }
}
