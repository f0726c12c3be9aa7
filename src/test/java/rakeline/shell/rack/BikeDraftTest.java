package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.quantity.Refusal;
import rakeline.study.Vocabulary;

class BikeDraftTest {
    private static final RackColumn STACK = RackColumn.of("frame.stackMm");
    private static final RackColumn STEM_ANGLE = RackColumn.of("cockpit.stemAngleDeg");
    private static final RackColumn CRANK = RackColumn.of("crank.lengthMm");
    private static final RackColumn STANCE = RackColumn.of("crank.stanceWidthMm");
    private static final RackColumn WHEELBASE = RackColumn.of("charted.wheelbaseMm");

    private static final RackColumn BEAD_SEAT = RackColumn.of("wheels.both.beadSeatMm");

    private final RackBike xs = bundled("road-xs");
    private final RackBike begun = row("", BikeDraft.begun("Customer"));

    static RackBike bundled(String name) {
        String path = "demo-data/bikes/" + name + ".bike.json";
        return row(path, BikeDraft.of(RackStock.bundled(path)));
    }

    private static RackBike row(String path, BikeDraft draft) {
        return new RackBike(
                "bike 1",
                draft,
                new RackBike.Filed(path, Optional.empty(), draft.bike(), "", ""),
                RackBike.Presence.LISTED,
                java.util.Set.of(),
                false);
    }

    private static RackBike type(RackBike bike, RackColumn column, String text) {
        return bike.with(bike.draft().typed(column, text, LengthUnit.MILLIMETRE));
    }

    private double typed(String text, RackColumn column) {
        return type(xs, column, text).value(column);
    }

    private static double inInches(String text) {
        BikeDraft xs = bundled("road-xs").draft();
        return xs.typed(STACK, text, LengthUnit.INCH).value(STACK);
    }

    @ParameterizedTest
    @CsvSource({"700c, 622", "28-622, 622", "29\", 622", "650b, 584", "571, 571", "700C, 622"})
    void aWheelIsTypedByItsNameToo(String text, double mm) {
        assertThat(typed(text, BEAD_SEAT)).isEqualTo(mm);
    }

    @ParameterizedTest
    @CsvSource({"512, 512", "'512,5', 512.5", "512.5, 512.5", "51.25 cm, 512.5", "'20,2 in', 513.08", "' 512 mm ', 512"
    })
    void aLengthIsStoredInMillimetresHoweverItIsTyped(String text, double mm) {
        assertThat(typed(text, STACK)).isEqualTo(mm);
    }

    @Test
    void aLengthWithoutUnitIsInTheUnitShown() {
        assertThat(inInches("20")).isEqualTo(508);
    }

    @Test
    void anAngleTakesADegreeSignAndEveryMinus() {
        assertThat(List.of(typed("−17°", STEM_ANGLE), typed("-17", STEM_ANGLE), typed("–17 deg", STEM_ANGLE)))
                .containsOnly(-17.0);
    }

    @ParameterizedTest
    @CsvSource({"abc", "1200", "20 kg", "5 1 2", "512 ± -3"})
    void whatCannotStandIsRefusedInOneSentence(String text) {
        assertThatThrownBy(() -> typed(text, STACK))
                .isInstanceOf(Refusal.class)
                .hasMessage("Stack is \"" + text + "\"; accepted is a number from 200 to 800 mm.");
    }

    @Test
    void aLengthIsShownInTheUnitChosenWithoutNeedlessZeros() {
        assertThat(List.of(STACK.show(508, LengthUnit.INCH), STACK.show(512.5, LengthUnit.CENTIMETRE)))
                .containsExactly("20", local("51.25"));
    }

    private static String local(String number) {
        return rakeline.shell.look.Numerals.show(Double.parseDouble(number));
    }

    @Test
    void aRefusalSpeaksInTheUnitShown() {
        assertThatThrownBy(() -> inInches("600"))
                .hasMessage("Stack is \"600\"; accepted is a number from " + local("7.874") + " to " + local("31.496")
                        + " in.");
    }

    @Test
    void aMeasureCannotBeTyped() {
        assertThatThrownBy(() -> typed("60", RackColumn.of("trailMm")))
                .hasMessage("Trail is computed; change a number that it follows from.");
    }

    @Test
    void anEditLeavesTheModelBeforeAsItWas() {
        type(xs, STACK, "512");
        assertThat(xs.value(STACK)).isEqualTo(508);
    }

    @Test
    void aNumberTypedRedrawsTheBike() {
        assertThat(type(xs, STACK, "512").bike())
                .contains(RackStock.bundled("demo-data/bikes/road-xs.bike.json").with(Inputs.STACK, 512));
    }

    @Test
    void bothWheelsAreOneCell() {
        Bike bike = type(xs, RackColumn.of("wheels.both.tyreMm"), "32").bike().orElseThrow();
        assertThat(List.of(bike.get(Inputs.FRONT_TYRE), bike.get(Inputs.REAR_TYRE)))
                .containsOnly(32.0);
    }

    @Test
    void anUncertaintyTypedBehindANumberMakesItMeasured() {
        Bike bike = type(xs, STACK, "512 ± 2").bike().orElseThrow();
        assertThat(bike.provenance().get("frame.stackMm"))
                .isEqualTo(new Provenance(Optional.of(Provenance.Origin.MEASURED), 2));
    }

    @Test
    void whatWasSolvedIsSoNoLongerOnceItIsTyped() {
        Bike bike = type(xs, RackColumn.of("frame.headTubeMm"), "110").bike().orElseThrow();
        assertThat(bike.provenance()).doesNotContainKey("frame.headTubeMm");
    }

    @Test
    void aNumberThatABikeCanBeWithoutIsClearedByAnEmptyCell() {
        assertThat(typed("", WHEELBASE)).isNaN();
    }

    @Test
    void aNumberThatABikeCannotBeWithoutIsNotCleared() {
        assertThatThrownBy(() -> typed("", STACK))
                .hasMessage("Stack is empty; a bike with the group frame cannot be without it.");
    }

    @Test
    void aNumberWaitsUntilItsGroupIsWhole() {
        RackBike waiting = type(begun, CRANK, "170");
        assertThat(waiting.isWaiting(CRANK)).isTrue();
        assertThat(waiting.missing()).contains(Inputs.STANCE_WIDTH, Inputs.STACK);
    }

    @Test
    void aGroupThatBecomesWholeIsPutOnTheBike() {
        BikeDraft bare = BikeDraft.of(bare());
        BikeDraft with = bare.type(CRANK, new Typed(170, Double.NaN));
        assertThat(with.bike()).contains(bare());
        assertThat(with.type(STANCE, new Typed(240, Double.NaN))
                        .bike()
                        .orElseThrow()
                        .get(Inputs.CRANK_LENGTH))
                .isEqualTo(170);
    }

    @Test
    void aBikeBegunAnewIsABikeOnceAllItsNumbersAreTyped() {
        RackBike typing = begun;
        for (var entry : Map.of(
                        "frame.stackMm", "560",
                        "frame.reachMm", "390",
                        "frame.headAngleDeg", "72.5",
                        "frame.seatAngleDeg", "73.5",
                        "frame.chainstayMm", "415",
                        "frame.bbDropMm", "70",
                        "fork.offsetMm", "45",
                        "wheels.both.beadSeatMm", "622",
                        "wheels.both.tyreMm", "28")
                .entrySet()) {
            typing = type(typing, RackColumn.of(entry.getKey()), entry.getValue());
        }
        assertThat(typing.bike().map(Bike::name)).contains("Customer");
        assertThat(typing.missing()).isEmpty();
    }

    @Test
    void aChartedNumberThatDisagreesSaysByHowMuch() {
        RackBike row = type(xs, WHEELBASE, "983");
        RackReading reading =
                RackReading.of(Vocabulary.standard(), row.bike().orElseThrow(), RackSeat.EMPTY, List.of());
        RackCell cell = RackCell.of(row, WHEELBASE, reading, LengthUnit.MILLIMETRE);
        assertThat(cell.mark()).isEqualTo(RackCell.Mark.DISAGREES);
        assertThat(cell.note()).matches("1[12][.,]\\d mm over");
    }

    @Test
    void aDisagreementNamesItsSuspects() {
        RackBike row = type(xs, WHEELBASE, "983");
        RackReading reading =
                RackReading.of(Vocabulary.standard(), row.bike().orElseThrow(), RackSeat.EMPTY, List.of());
        assertThat(RackWords.cell(row, WHEELBASE, reading, LengthUnit.MILLIMETRE))
                .contains(
                        "of which rounding explains",
                        "Chainstay would have to be 422 instead of 410 mm, or charted wheelbase 971 instead of 983 mm");
    }

    @Test
    void suspectsAreInTheUnitThatTheTableIsIn() {
        RackBike row = type(xs, WHEELBASE, "983");
        RackReading reading =
                RackReading.of(Vocabulary.standard(), row.bike().orElseThrow(), RackSeat.EMPTY, List.of());
        assertThat(String.join(" ", reading.sentences(LengthUnit.CENTIMETRE)))
                .matches(".*Chainstay would have to be 42[.,]2 instead of 41 cm, or charted wheelbase 97[.,]1 .*");
    }

    @Test
    void aBikeWhoseNumbersAgreeSaysWhereItStands() {
        assertThat(RackWords.state(xs, RackReading.NONE)).isEqualTo("comes with the program");
    }

    @Test
    void aBikeBegunAnewSaysWhatItNeeds() {
        assertThat(RackWords.state(begun, RackReading.NONE)).matches("needs stack and \\d+ more");
    }

    @Test
    void aCellIsReadAloudWithBikeLabelValueAndUnit() {
        assertThat(RackWords.spoken(xs, STACK, RackReading.NONE, LengthUnit.MILLIMETRE))
                .isEqualTo("Road XS, Stack: 508 mm.");
    }

    private static Bike bare() {
        Bike whole = RackStock.bundled("demo-data/bikes/road-xs.bike.json");
        return Bike.of(
                "Bare",
                Inputs.all().stream()
                        .filter(input -> whole.given().has(input))
                        .filter(input -> Bike.NEEDED_GROUPS.contains(input.group()))
                        .reduce(
                                rakeline.quantity.Entries.none(),
                                (entries, input) -> entries.with(input, whole.get(input)),
                                (one, other) -> one),
                java.util.Set.of(),
                Map.of());
    }
}
