package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

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

    @Test
    void aStoredChoiceThatIsGoneIsSaid() throws InterruptedException {
        page.run(Pages.of(BIKES).withPick("mine", "gone.bike.json"));
        assertThat(page.message("r1"))
                .startsWith("The stored choice \"gone.bike.json\" of the picker mine is not among");
    }
}
