package rakeline.catalogue.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rakeline.catalogue.chart.Charts.ONE;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.quantity.Refusal;

/** What is understood of a maker's chart. */
class ChartFileTest {
    private static final String TURNED = """
            ,S,M
            Stack,525,546
            Reach,379,387
            HTA,72.4,73
            STA,74,73.6
            Chainstay,410,410
            BB drop,72,70
            Rake,44,43
            Wheel,622,622
            Tyre,28,28
            """;

    @Test
    void aRowIsASize() {
        Bike bike = Charts.bike(ONE);
        assertThat(bike.name()).isEqualTo("S");
        assertThat(bike.get("frame.headAngleDeg")).isEqualTo(72.4);
        assertThat(bike.get("wheels.rear.tyreMm")).isEqualTo(28);
    }

    @Test
    void aColumnIsASize() {
        List<Bike> bikes = Charts.read(TURNED).bikes();
        assertThat(bikes).extracting(Bike::name).containsExactly("S", "M");
        assertThat(bikes.get(1).get("frame.stackMm")).isEqualTo(546);
    }

    @Test
    void theSameNumbersGiveTheSameBikesEitherWay() {
        assertThat(Charts.read(TURNED).bikes().get(0)).isEqualTo(Charts.bike(ONE));
    }

    @Test
    void linesAboveTheHeadingsArePassedOver() {
        assertThat(Charts.bike("Our road frame,,,,,,,,,\n\n" + ONE)).isEqualTo(Charts.bike(ONE));
    }

    @Test
    void semicolonsAndDecimalCommasAreRead() {
        String german =
                ONE.replace('.', ';').replace(',', ':').replace(';', ',').replace(':', ';');
        assertThat(Charts.bike(german)).isEqualTo(Charts.bike(ONE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r"})
    void linesOfAnySystemAreRead(String end) {
        assertThat(Charts.bike(ONE.replace("\n", end))).isEqualTo(Charts.bike(ONE));
    }

    @Test
    void aMarkQuotesTabsAndBlanksAreRead() {
        String text = "\uFEFF" + ONE.replace("Stack", "\" Stack \"").replace("S,", "\"S\",");
        assertThat(Charts.bike(text)).isEqualTo(Charts.bike(ONE));
        assertThat(Charts.bike(ONE.replace(',', '\t'))).isEqualTo(Charts.bike(ONE));
    }

    @ParameterizedTest
    @CsvSource({
        "Stack (cm),52.5",
        "Stack [cm],52.5",
        "'Stack, cm',52.5",
        "Stack cm,52.5",
        "Stack (in),20.66929133858268",
        "Stack (mm),525",
        "Stack,52.5 cm",
        "Stack,525mm",
        "Stack (inches),20.66929133858268"
    })
    void theUnitStandsInTheHeadingOrInTheCell(String heading, String cell) {
        String text = ONE.replace("Stack", "\"" + heading + "\"").replace("525", cell);
        assertThat(Charts.bike(text).get("frame.stackMm")).isCloseTo(525, within(1e-9));
    }

    @Test
    void aRowOfUnitsIsRead() {
        String[] lines = ONE.split("\n", -1);
        String text = lines[0] + "\nunits,cm,mm,°,deg,mm,mm,mm,,\n" + lines[1].replace("525", "52.5") + "\n";
        assertThat(Charts.bike(text)).isEqualTo(Charts.bike(ONE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Geometry (cm)", "all in cm", "cm"})
    void theHeadingOfTheHeadingsGivesItsUnitToTheFrame(String heading) {
        String text = heading + """
                ;S;M
                Stack;52,5;54,6
                Reach;37,9;38,7
                HTA;72,4;73
                STA;74;73,6
                Chainstay (mm);410;410
                BB drop;7,2;7
                Rake;4,4;4,3
                Wheel;622;622
                Tyre;28;28
                """;
        assertThat(Charts.read(text).doubts()).isEmpty();
        assertThat(Charts.read(text).bikes()).isEqualTo(Charts.read(TURNED).bikes());
    }

    @Test
    void theDecimalMarkIsTheOneThatMostNumbersUse() {
        String text = """
                Size;Stack;Reach;HTA;STA;Chainstay;BB drop;Rake;Wheel;Tyre;Wheelbase
                S;525,5;379,5;72,4;73.6;410;72;44;622;28;1.012
                """;
        assertThat(Charts.read(text).doubts())
                .extracting(ChartImport.Doubt::sentence)
                .contains(
                        "row 2, column 5 \"73.6\": uses another decimal mark than the rest of the chart, which has the"
                                + " decimal comma.");
    }

    @Test
    void theUnitBesideTheSizesIsThatOfTheSizesAlone() {
        assertThat(Charts.bike(ONE.replace("Size", "Size (cm)"))).isEqualTo(Charts.bike(ONE));
    }

    @Test
    void aColumnOfUnitsIsRead() {
        String text = """
                ,,S
                Stack,cm,52.5
                Reach,cm,37.9
                HTA,°,72.4
                STA,°,74
                Chainstay,in,16.14173228346457
                BB drop,mm,72
                Rake,mm,44
                Wheel,,700c
                Tyre,mm,28
                """;
        Bike bike = Charts.bike(text);
        assertThat(bike.name()).isEqualTo("S");
        assertThat(bike.get("frame.stackMm")).isEqualTo(525);
        assertThat(bike.get("frame.chainstayMm")).isCloseTo(410, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "HTA,frame.headAngleDeg",
        "Head tube angle,frame.headAngleDeg",
        "Head Angle (deg),frame.headAngleDeg",
        "Head tube (°),frame.headAngleDeg",
        "STA,frame.seatAngleDeg",
        "Seat tube °,frame.seatAngleDeg",
        "Actual seat tube angle,frame.seatTubeAngleDeg",
        "CS,frame.chainstayMm",
        "Chain-stay length,frame.chainstayMm",
        "Rear Center,frame.chainstayMm",
        "Bottom bracket drop,frame.bbDropMm",
        "Fork rake,fork.offsetMm",
        "Rake / offset,fork.offsetMm",
        "Axle-to-crown,fork.axleToCrownMm",
        "Fork length,fork.axleToCrownMm",
        "Front Centre,charted.frontCentreMm",
        "front-center,charted.frontCentreMm",
        "WHEELBASE,charted.wheelbaseMm",
        "ETT,charted.effectiveTopTubeMm",
        "Top tube (effective),charted.effectiveTopTubeMm",
        "Eff. top tube,charted.effectiveTopTubeMm",
        "TT eff.,charted.effectiveTopTubeMm",
        "Eff. TT (horiz.),charted.effectiveTopTubeMm",
        "HT angle,frame.headAngleDeg",
        "HT length (mm),frame.headTubeMm",
        "BB-drop,frame.bbDropMm",
        "Stand-over height,charted.standoverMm",
        "Trail,charted.trailMm",
        "A: Head tube,frame.headTubeMm",
        "Tire width,wheels.both.tyreMm",
        "Wheel size,wheels.both.beadSeatMm",
        "headAngleDeg,frame.headAngleDeg"
    })
    void aWordOfTheTradeIsAKey(String word, String key) {
        assertThat(ChartWords.meaning(word)).contains(key);
    }

    @Test
    void ofTwoSeatAnglesTheOtherIsTheTubesOwn() {
        String text = ONE.replace("STA,", "Effective seat tube angle,Seat tube angle,")
                .replace(",74,", ",74,71,");
        assertThat(Charts.bike(text).get("frame.seatAngleDeg")).isEqualTo(74);
        assertThat(Charts.bike(text).get("frame.seatTubeAngleDeg")).isEqualTo(71);
    }

    @ParameterizedTest
    @CsvSource({
        "700c,622",
        "700C,622",
        "650b,584",
        "29\",622",
        "27.5,584",
        "571,571",
        "ISO 584,584",
        "28-622,622",
        "700x28c,622",
        "650b × 28,584"
    })
    void aWheelHasManyNames(String name, double beadSeat) {
        String text = ONE.replace("622", "\"" + name.replace("\"", "\"\"") + "\"");
        assertThat(Charts.bike(text).get("wheels.front.beadSeatMm")).isEqualTo(beadSeat);
    }

    @ParameterizedTest
    @ValueSource(strings = {"28c", "28 mm", "28", "700x28c", "28-622"})
    void aTyreHasManyNames(String name) {
        assertThat(Charts.bike(ONE.replace(",28", "," + name)).get("wheels.front.tyreMm"))
                .isEqualTo(28);
    }

    @Test
    void numbersOfTheChartAreCharted() {
        assertThat(Charts.bike(ONE).provenance().get("frame.stackMm").from()).contains(Provenance.Origin.CHARTED);
    }

    @Test
    void aNumberCanBeSaidForEverySize() {
        String bare = ONE.replace(",Tyre", "").replace(",28", "");
        ChartImport read = Charts.read(bare, Map.of("wheels.both.tyreMm", 32.0));
        assertThat(read.bikes().get(0).get("wheels.front.tyreMm")).isEqualTo(32);
        assertThat(read.bikes().get(0).provenance().get("wheels.rear.tyreMm").from())
                .contains(Provenance.Origin.ASSUMED);
    }

    @Test
    void whatIsMissingIsAskedFor() {
        String bare = ONE.replace(",Wheel,Tyre", "").replace(",622,28", "");
        assertThat(Charts.doubt(bare).sentence())
                .contains("\"S\"", "wheels.both.beadSeatMm", "wheels.both.tyreMm", "missing");
    }

    @Test
    void aCrankThatMayBeTwoIsLeftOutAndTheSizeIsNot() {
        ChartImport read = Charts.read(ONE.replace("Tyre", "Tyre,Crank").replace(",28", ",28,170/172.5"));
        assertThat(read.isWhole()).isTrue();
        assertThat(read.bikes().get(0).hasGroup("crank")).isFalse();
        assertThat(read.leftOut())
                .singleElement()
                .satisfies(cell -> assertThat(cell.text()).isEqualTo("170/172.5"));
    }

    @Test
    void aCrankIsKeptAndHowFarItsPedalsStandApartIsAssumed() {
        ChartImport read = Charts.read(ONE.replace("Tyre", "Tyre,Crank length").replace(",28", ",28,165"));
        Bike bike = read.bikes().get(0);
        assertThat(bike.get(Inputs.CRANK_LENGTH)).isEqualTo(165);
        assertThat(bike.provenance().get("crank.stanceWidthMm").from()).contains(Provenance.Origin.ASSUMED);
        assertThat(read.notes()).anyMatch(note -> note.contains("crank.stanceWidthMm 250 (assumed)"));
    }

    @Test
    void aDoubtfulCellLeavesItsOwnSizeOutAlone() {
        ChartImport read =
                Charts.read(ONE + ONE.lines().skip(1).findFirst().orElseThrow().replace("S,", "M,5x,"));
        assertThat(read.isWhole()).isFalse();
        assertThat(read.bikes()).hasSize(1);
    }

    @Test
    void ofTwoHeadingsThatSayTheSameNoneIsTaken() {
        ChartImport read = Charts.read(ONE.replace("Tyre", "Tyre,HTA").replace(",28", ",28,72"));
        assertThat(read.bikes()).isEmpty();
        assertThat(read.doubts())
                .singleElement()
                .satisfies(doubt -> assertThat(doubt.text()).isEqualTo("HTA"));
    }

    @Test
    void anUnknownHeadingIsLeftOutWithTheNearest() {
        ChartImport read = Charts.read(ONE.replace("Tyre", "Tyre,Whelbase").replace(",28", ",28,972"));
        assertThat(read.isWhole()).isTrue();
        assertThat(read.leftOut().get(0).sentence()).contains("row 1, column 11", "Whelbase", "wheelbase");
    }

    @Test
    void aTopTubeThatMayBeEitherIsLeftOutWithItsReason() {
        ChartImport read = Charts.read(ONE.replace("Tyre", "Tyre,Top tube").replace(",28", ",28,530"));
        assertThat(read.leftOut().get(0).sentence()).contains("effective");
    }

    @ParameterizedTest
    @CsvSource({
        "525,around 525,is not a number",
        "525,52.5,cm in the heading",
        "525,525c,is not a number",
        "525,12,in in the heading",
        "72.4,724,50..85",
        "525,5250,200..800",
        "72.4,72.4 mm,unit",
        "622,650,wheel size",
        "525,'\"52,5\"',decimal",
    })
    void aDoubtfulCellIsNamedWithItsPlace(String old, String cell, String reason) {
        ChartImport.Doubt doubt = Charts.doubt(ONE.replace(old, cell));
        assertThat(doubt.place()).startsWith("row 2, column ");
        assertThat(doubt.sentence()).contains(reason);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", "n/a"})
    void aNeededCellThatIsEmptyIsNamedWithItsPlace(String nothing) {
        ChartImport.Doubt doubt = Charts.doubt(ONE.replace("72.4", nothing));
        assertThat(doubt.sentence()).startsWith("row 2, column ").contains("frame.headAngleDeg is missing");
    }

    @Test
    void aNeededCellThatIsEmptyIsNamedBesideAnotherDoubt() {
        ChartImport read = Charts.read(ONE.replace("72.4", "").replace("525", "about 525"));
        assertThat(read.doubts()).hasSize(2);
        assertThat(read.doubts().get(1).sentence()).contains("frame.headAngleDeg is missing");
    }

    @Test
    void aMarkForThousandsIsDoubtful() {
        String text = ONE.replace("Tyre", "Tyre;Wheelbase")
                .replace(",28", ",28;1.012")
                .replace(',', ';');
        assertThat(Charts.doubt(text).sentence()).contains("row 2, column 11", "1.012", "thousands");
    }

    @Test
    void aCellThatContradictsAnotherIsDoubtful() {
        assertThat(Charts.doubt(ONE.replace("622", "700x32c")).sentence()).contains("28", "another number");
    }

    @Test
    void aNumberThatIsSaidTwiceIsDoubtful() {
        String text = ONE.replace("Tyre", "Tyre,Stack (in)").replace(",28", ",28,20.67");
        assertThat(Charts.doubt(text).sentence()).contains("row 1, column 11", "row 1, column 2");
    }

    @Test
    void aNumberWithoutAHeadingIsLeftOutWithItsPlace() {
        ChartImport read = Charts.read(ONE.strip() + ",999");
        assertThat(read.leftOut()).extracting(ChartImport.Doubt::text).contains("999");
        assertThat(read.bikes()).hasSize(1);
    }

    @Test
    void aNameThatIsThereTwiceIsDoubtful() {
        assertThat(Charts.doubt(ONE + ONE.split("\n", -1)[1]).sentence()).contains("\"S\"", "more than one");
    }

    @Test
    void theOtherSizesArePreviewedAllTheSame() {
        String text = ONE + "M,546,around 387,73,73.6,410,70,43,622,28\n";
        assertThat(Charts.read(text).bikes()).extracting(Bike::name).containsExactly("S");
    }

    /** Stack and reach of invented frames from their other columns, which another implementation printed to 0.1 mm. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/rakeline/geometry/families.csv")
    void stackAndReachAreSolvedFor(
            String family,
            String size,
            String beadSeat,
            String tyre,
            String stack,
            String reach,
            String head,
            String seat,
            String headTube,
            String lowerStack,
            String drop,
            String chainstay,
            String offset,
            String crank,
            String axleToCrown,
            String frontCentre,
            String wheelbase,
            String trail,
            String topTube) {
        if (family.equals("family")) {
            return;
        }
        Bike bike = Charts.bike("Size,Wheel,Tyre,HTA,STA,Head tube,Lower stack,BB drop,Chainstay,Rake,Fork length,ETT\n"
                + String.join(
                        ",",
                        List.of(
                                size,
                                beadSeat,
                                tyre,
                                head,
                                seat,
                                headTube,
                                lowerStack,
                                drop,
                                chainstay,
                                offset,
                                axleToCrown,
                                topTube)));
        assertThat(bike.get("frame.stackMm")).isCloseTo(Double.parseDouble(stack), within(0.1));
        assertThat(bike.get("frame.reachMm")).isCloseTo(Double.parseDouble(reach), within(0.1));
        assertThat(bike.provenance().get("frame.stackMm").from()).contains(Provenance.Origin.SOLVED);
    }

    @Test
    void aLowerStackThatIsNotGivenIsAssumedToBeNone() {
        ChartImport read = Charts.read("Size,Wheel,Tyre,HTA,STA,Head tube,BB drop,Chainstay,Rake,Fork length,ETT\n"
                + "M,622,28,73,73.6,138,70,410,43,374.4,547.7");
        assertThat(read.notes()).anySatisfy(note -> assertThat(note).contains("M", "fork.lowerStackMm 0", "assumed"));
        assertThat(read.bikes().get(0).provenance().get("fork.lowerStackMm").from())
                .isEqualTo(Optional.of(Provenance.Origin.ASSUMED));
    }

    /** By definition: BB drop = wheel radius − BB height. */
    @Test
    void theDropFollowsFromTheHeight() {
        Bike bike = Charts.bike(ONE.replace("BB drop", "BB height").replace(",72,", ",267,"));
        assertThat(bike.get("frame.bbDropMm")).isEqualTo(622 / 2.0 + 28 - 267);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "  \n ", "just words", "Stack\n525\n", "a,b\n1,2\n", "Stack,Reach\n", "\"Stack,Reach\n1,2"})
    void whatIsNoChartIsRefusedInOneSentence(String text) {
        assertThatThrownBy(() -> Charts.read(text)).satisfies(ChartFileTest::isOnePlainSentence);
    }

    @Test
    void anotherEncodingIsRefused() {
        byte[] bytes = ONE.getBytes(StandardCharsets.UTF_16);
        assertThatThrownBy(() -> ChartFile.read(bytes, Charts.FILE, new ChartImport.Wanted("", "", Map.of())))
                .satisfies(ChartFileTest::isOnePlainSentence);
    }

    @Test
    void aTableOfTooManyCellsIsRefused() {
        assertThatThrownBy(() -> Charts.read("Stack,Reach\n" + ",\n".repeat(60_000)))
                .satisfies(ChartFileTest::isOnePlainSentence);
    }

    static void isOnePlainSentence(Throwable refusal) {
        assertThat(refusal).isInstanceOf(Refusal.class);
        assertThat(refusal.getMessage())
                .startsWith(Charts.FILE + ": ")
                .matches("(?s).*[^.?][.?]")
                .doesNotContain("\n", "Exception", "com.fasterxml", "java.lang")
                .hasSizeLessThan(400);
    }
}
