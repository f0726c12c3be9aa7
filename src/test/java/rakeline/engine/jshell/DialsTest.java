package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rakeline.engine.Control;
import rakeline.engine.State;
import rakeline.worksheet.Worksheet;

/** Dials and pickers, from declaration to dependants. */
@Tag("process")
class DialsTest {
    private static final String HEAD = "double head = dial(\"Head angle\", \"°\", 69, 74, 0.1, 71.3);";
    private static final String BIKES = "Bike mine = pick(\"Bike\", bikes());";

    @RegisterExtension
    static final Running page = Running.standard();

    private static Control.Dial dial(String row) {
        return (Control.Dial) page.row(row).controls().get(0);
    }

    @Test
    void aDialIsDeclaredByItsVariable() throws InterruptedException {
        page.run(HEAD);
        assertThat(dial("r1"))
                .isEqualTo(new Control.Dial("head", "Head angle", "", "°", 69, 74, 0.1, 71.3, Double.NaN, 71.3, 1));
    }

    @Test
    void movingADialRunsWhatDependsOnIt() throws InterruptedException {
        page.run(HEAD, "double twice = head * 2;", "twice + 1");
        page.session().dial("head", 70);
        assertThat(page.settle().value("r3")).isEqualTo("141");
    }

    @Test
    void aRowSaysWhichDialsItFollows() throws InterruptedException {
        page.run(HEAD, "double twice = head * 2;", "double still = 3;", "twice + 1");
        assertThat(page.row("r4").follows()).containsExactly("head");
        assertThat(page.row("r3").follows()).isEmpty();
    }

    @Test
    void movingADialCompilesNothing() throws InterruptedException {
        page.run(HEAD, "head + new Object() {}.getClass().getName()");
        String before = page.value("r2").replaceFirst("71.3", "");
        page.session().dial("head", 72);
        assertThat(page.settle().value("r2").replaceFirst("72.0", "")).isEqualTo(before);
    }

    @Test
    void aRowThatDoesNotDependOnTheDialStaysAsItIs() throws InterruptedException {
        page.run(HEAD, "System.nanoTime()", "head");
        String before = page.value("r2");
        page.session().dial("head", 72);
        assertThat(page.settle().value("r2")).isEqualTo(before);
        assertThat(page.value("r3")).isEqualTo("72");
    }

    @Test
    void aSumIsNotAddedToTwiceWhenADialMoves() throws InterruptedException {
        page.run(HEAD, "double sum = 1;", "sum += head;", "sum");
        page.session().dial("head", 70);
        assertThat(page.settle().value("r4")).isEqualTo("71");
    }

    @Test
    void aListIsNotFilledTwiceThroughAnotherNameWhenADialMoves() throws InterruptedException {
        page.run(
                HEAD,
                "List<Double> all = new ArrayList<>();",
                "Runnable more = () -> all.add(1.0);",
                "if (head > 60) more.run();",
                "all.size()");
        page.session().dial("head", 70);
        assertThat(page.settle().value("r5")).isEqualTo("1");
    }

    @Test
    void aVariableWithoutInitialiserStartsAgainWhenADialMoves() throws InterruptedException {
        page.run(HEAD, "double n;\nn += head;");
        page.session().dial("head", 70);
        assertThat(page.settle().value("r2")).isEqualTo("70");
    }

    @Test
    void aStaticFieldStartsAgainWhenADialMoves() throws InterruptedException {
        page.run(HEAD, "class Count { static int n; }", "Count.n += head > 60 ? 1 : 0;", "Count.n");
        page.session().dial("head", 70);
        assertThat(page.settle().value("r4")).isEqualTo("1");
    }

    @Test
    void theRangeOfADialMayFollowAnother() throws InterruptedException {
        page.run(HEAD, "double seat = dial(\"Seat\", \"°\", head, head + 3, 0.5, head + 1);");
        page.session().dial("head", 70);
        page.settle();
        assertThat(dial("r2").max()).isEqualTo(73);
    }

    @Test
    void aStoredValueIsTheDials() throws InterruptedException {
        page.run(Pages.of(HEAD, "head").withDials(Map.of("head", 73.0)));
        assertThat(page.value("r2")).isEqualTo("73");
    }

    @Test
    void aStoredValueOutsideTheRangeIsNotUsedAndTheRowSaysSo() throws InterruptedException {
        page.run(Pages.of(HEAD, "head").withDials(Map.of("head", 80.0)));
        assertThat(page.value("r2")).isEqualTo("71.3");
        assertThat(page.state("r1")).isEqualTo(State.FRESH);
        assertThat(page.message("r1"))
                .isEqualTo("The stored value 80 of the dial head is outside 69..74; 71.3 is used.");
    }

    @Test
    void takingTheStoredValueBackReturnsToTheInitialOne() throws InterruptedException {
        Worksheet plain = Pages.of(HEAD, "head");
        page.run(plain.withDials(Map.of("head", 73.0)));
        assertThat(page.run(plain).value("r2")).isEqualTo("71.3");
    }

    @Test
    void aRowThatFailsAtOneValueOfTheDialRunsAtTheNext() throws InterruptedException {
        page.run(HEAD, "int all = 10 / (int) (head - 70);", "all");
        page.session().dial("head", 70.5);
        page.settle();
        assertThat(page.message("r2")).startsWith("Line 1: / by zero.");
        assertThat(page.state("r3")).isEqualTo(State.NOT_RUN);
        page.session().dial("head", 72);
        assertThat(page.settle().value("r3")).isEqualTo("5");
    }

    @Test
    void theLatestValueOfADialWins() throws InterruptedException {
        page.run(HEAD, "head");
        for (int i = 0; i <= 50; i++) {
            page.session().dial("head", 69 + i * 0.1);
        }
        assertThat(page.settle().value("r2")).isEqualTo("74");
    }

    @Test
    void aPickerChoosesAmongBikes() throws InterruptedException {
        page.run(BIKES, "mine.name()");
        Control.Picker picker = (Control.Picker) page.row("r1").controls().get(0);
        String before = page.value("r2");
        page.session().pick("mine", picker.paths().get(1));
        assertThat(page.settle().value("r2")).isNotEqualTo(before);
    }

    private static final String OWN =
            "Bike own = bike(\"demo-data/bikes/road-m.bike.json\").with(\"contact.handXMm\", 464);";
    private static final String HAND = "double x = dial(\"contact.handXMm\", own, 500, 640);";

    @Test
    void aBoundDialHoldsTheBikesOwnValueWhateverItsRangeAndSaysSo() throws InterruptedException {
        page.run(OWN, HAND, "x");
        assertThat(page.value("r3")).isEqualTo("464");
        assertThat(dial("r2"))
                .extracting(Control.Dial::min, Control.Dial::max, Control.Dial::own, Control.Dial::value)
                .containsExactly(464.0, 640.0, 464.0, 464.0);
        assertThat(page.state("r2")).isEqualTo(State.FRESH);
        assertThat(page.message("r2"))
                .isEqualTo(
                        "The dial \"Hand point wanted, x\", written for 500 to 640 mm, goes down to Road M's own 464 mm.");
    }

    @Test
    void aStoredValueInTheWidenedPartOfARangeIsTheDials() throws InterruptedException {
        page.run(Pages.of(OWN, HAND, "x").withDial("x", 470));
        assertThat(page.value("r3")).isEqualTo("470");
    }

    @Test
    void aStoredValueIsOutsideAgainOnceTheBikeWidensTheRangeNoMore() throws InterruptedException {
        page.run(Pages.of(OWN.replace("464", "520"), HAND, "x").withDial("x", 470));
        assertThat(page.value("r3")).isEqualTo("520");
        assertThat(page.message("r2")).contains("The stored value 470 of the dial x is outside 500..640; 520 is used.");
    }

    @Test
    void aDialOfAnInputThatTheBikeDoesNotGiveIsRefusedInOneSentence() throws InterruptedException {
        page.run(
                "double weight = dial(\"wheels.front.mudguardGapMm\", bike(\"demo-data/bikes/road-m.bike.json\"), 0, 30);");
        assertThat(page.message("r1"))
                .contains("has no value to start from: Road M gives no wheels.front.mudguardGapMm.");
    }

    @Test
    void aFreeDialThatStartsOutsideItsRangeIsRefusedInOneSentence() throws InterruptedException {
        page.run("double x = dial(\"Offset\", \"mm\", 30, 65, 1, 70);");
        assertThat(page.state("r1")).isEqualTo(State.FAILED);
        assertThat(page.message("r1")).contains("the dial \"Offset\" starts at 70, outside its range 30..65.");
    }

    private static Control.Picker picker() {
        return (Control.Picker) page.row("r1").controls().get(0);
    }

    @Test
    void aPickerKeepsItsChoiceWhenTheRackOffersOthersAlone() throws InterruptedException {
        page.run(Pages.of(BIKES, "mine.name()")
                .withPick("mine", "demo-data/bikes/road-xs.bike.json")
                .withRack(List.of("demo-data/bikes/road-m.bike.json")));
        assertThat(page.value("r2")).isEqualTo("\"Road XS\"");
        assertThat(picker().labels()).containsExactly("Road M", "Road XS");
        assertThat(page.message("r1"))
                .isEqualTo("The picker \"Bike\" keeps its choice, Road XS (demo-data/bikes/road-xs.bike.json), which is"
                        + " not among the others offered.");
    }

    @Test
    void aChoiceWhoseFileIsGoneFailsItsRowAndNoOtherTakesItsPlace() throws InterruptedException {
        page.run(Pages.of(BIKES, "mine.name()").withPick("mine", "gone.bike.json"));
        assertThat(page.state("r1")).isEqualTo(State.FAILED);
        assertThat(page.state("r2")).isEqualTo(State.NOT_RUN);
        assertThat(page.message("r1"))
                .contains("The picker \"Bike\" stands at gone.bike.json, which cannot be read, and nothing is taken in"
                        + " its place: gone.bike.json is ");
    }

    @Test
    void whereTheFileIsGoneAnotherCanBePicked() throws InterruptedException {
        page.run(Pages.of(BIKES, "mine.name()").withPick("mine", "gone.bike.json"));
        assertThat(picker().chosen()).isEqualTo("gone.bike.json");
        page.session().pick("mine", picker().paths().get(0));
        assertThat(page.settle().state("r2")).isEqualTo(State.FRESH);
        assertThat(picker().paths()).doesNotContain("gone.bike.json");
    }

    @Test
    void aRackWhoseFirstFileIsGoneRunsOnNoOther() throws InterruptedException {
        page.run(
                Pages.of(BIKES, "mine.name()").withRack(List.of("gone.bike.json", "demo-data/bikes/road-m.bike.json")));
        assertThat(page.state("r1")).isEqualTo(State.FAILED);
        assertThat(picker().labels()).containsExactly("gone.bike.json (cannot be read)", "Road M");
    }
}
