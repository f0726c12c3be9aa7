package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.figure.Chart;
import rakeline.figure.Drawing;
import rakeline.figure.Table;

/** What rows show, print and say. */
@Tag("process")
class RowsTest {
    @RegisterExtension
    static final Running page = Running.standard();

    @Test
    void aRowShowsItsLastExpression() throws InterruptedException {
        assertThat(page.run("double a = 3;\na * 2").value("r1")).isEqualTo("6");
    }

    @Test
    void aRowThatEndsInAStatementShowsItsLastVariable() throws InterruptedException {
        page.run("double sum = 0;\nfor (int i = 1; i < 4; i++) sum += i;");
        assertThat(page.value("r1")).isEqualTo("6");
    }

    @Test
    void anEmptyRowAndOneOfNothingButACommentAreFresh() throws InterruptedException {
        page.run("", "// nothing yet", "1 + 1");
        assertThat(page.value("r1")).isEqualTo("nothing");
        assertThat(page.value("r2")).isEqualTo("nothing");
        assertThat(page.value("r3")).isEqualTo("2");
    }

    @Test
    void aRowOfStatementsShowsNothing() throws InterruptedException {
        assertThat(page.run("System.out.print(\"said\");").value("r1")).isEqualTo("nothing");
        assertThat(page.row("r1").printed()).isEqualTo("said");
    }

    @Test
    void aNumberIsShownShortest() throws InterruptedException {
        Outcome row = page.run("0.1 + 0.2").row("r1");
        assertThat(row.result()).contains(Result.Value.of("0.30000000000000004", 0.1 + 0.2));
    }

    @Test
    void aStringIsText() throws InterruptedException {
        assertThat(page.run("\"Ünï \" + 1").row("r1").result()).contains(new Result.Text("Ünï 1"));
    }

    @Test
    void aLongArrayIsCutToOneLine() throws InterruptedException {
        assertThat(page.run("new int[3_000_000]").value("r1")).endsWith("0, 0, … 3000000 in all]");
    }

    @Test
    void anExceptionInToStringIsSaid() throws InterruptedException {
        page.run("class Sly { public String toString() { throw new IllegalStateException(); } }\nnew Sly()");
        assertThat(page.value("r1")).isEqualTo("a Sly whose toString() throws IllegalStateException");
    }

    @Test
    void anObjectWithoutWordsOfItsOwnIsCalledByItsClassAlone() throws InterruptedException {
        page.run("class Plain {}", "new Plain()", "var loose = new Object() { int kept = 4; };");
        assertThat(page.value("r2")).isEqualTo("an object of Plain");
        assertThat(page.value("r3")).isEqualTo("an object");
    }

    @Test
    void aBikesSweepIsAChart() throws InterruptedException {
        page.run(
                "Bike xs = bike(\"demo-data/bikes/endurance-xs.bike.json\");",
                "sweep(xs).over(\"frame.headAngleDeg\", 69, 74).track(\"trailMm\").chart()",
                "measures(xs)",
                "draw(xs)");
        assertThat(shown("r2"))
                .isInstanceOfSatisfying(
                        Chart.class, chart -> assertThat(chart.steps().size()).isEqualTo(201));
        assertThat(shown("r3")).isInstanceOf(Table.class);
        assertThat(shown("r4")).isInstanceOf(Drawing.class);
        assertThat(page.outcomes().stream().map(Outcome::name)).containsExactly("xs", "chart", "table", "drawing");
    }

    private static Object shown(String id) {
        assertThat(page.message(id)).isEmpty();
        return ((Result.Shown) page.row(id).result().orElseThrow()).figure();
    }

    @Test
    void aFigureOfMoreThanAMillionNumbersIsNotShown() throws InterruptedException {
        page.run("new Table(\"big\", List.of(new Column(\"a\", \"a\", \"\", Numbers.none(),"
                + " Collections.nCopies(1_000_001, \"x\"))), \"\", List.of())");
        assertThat(page.message("r1")).isEqualTo("The result holds 1000001 numbers; at most 1000000 are shown.");
    }

    @Test
    void aResultOfTooManyBytesIsNotShown() throws InterruptedException {
        page.run("new Table(\"big\", List.of(new Column(\"a\", \"a\", \"\", Numbers.none(),"
                + " Collections.nCopies(900_000, \"x\".repeat(90)))), \"\", List.of())");
        assertThat(page.message("r1")).isEqualTo("The result takes 80 MB; at most 64 MB are shown.");
        assertThat(page.run("1 + 1").value("r1")).isEqualTo("2");
    }

    @Test
    void printedTextIsCutAtItsBound() throws InterruptedException {
        page.run("for (int i = 0; i < 20_000; i++) System.out.println(\"0123456789\");");
        assertThat(page.row("r1").printed())
                .hasSizeBetween(64 * 1024, 64 * 1024 + 80)
                .endsWith("\n… the row printed more than 64 KB; the rest is left out.");
    }

    @Test
    void whatOneRowPrintsIsNotTheNextOnes() throws InterruptedException {
        page.run("System.out.println(1);", "System.err.println(2);");
        assertThat(page.row("r1").printed()).isEqualTo("1\n");
        assertThat(page.row("r2").printed()).isEqualTo("2\n");
    }

    @Test
    void anUnknownNameOffersTheNearestAbove() throws InterruptedException {
        page.run("double trailMm = 58;", "\n  trialMm + 1");
        assertThat(page.message("r2"))
                .startsWith("Line 2, column 3: nothing is called trialMm here; did you mean trailMm?\n")
                .contains("cannot find symbol");
    }

    @Test
    void aMethodThatCallsWhatIsNotThereFails() throws InterruptedException {
        page.run("double half(double x) { return haff(x); }");
        assertThat(page.message("r1")).startsWith("Line 1").contains("nothing is called haff here");
    }

    @Test
    void anExceptionIsSaidWithItsLine() throws InterruptedException {
        page.run("int zero = 0;\n\nint q = 3 / zero;");
        assertThat(page.message("r1")).isEqualTo("Line 3: / by zero.\njava.lang.ArithmeticException: / by zero");
    }

    @Test
    void anExceptionInAnExpressionBelowOthersIsSaidWithItsLine() throws InterruptedException {
        page.run("int zero = 0;\n// what is asked\n\n3 / zero");
        assertThat(page.message("r1")).startsWith("Line 4: / by zero.");
    }

    @Test
    void anExceptionInAMethodOfAnotherRowIsSaidWithTheLineOfThisOne() throws InterruptedException {
        page.run("int over(int x) {\n  return 1 / x;\n}", "int a = 1;\nint b = over(0);");
        assertThat(page.message("r2")).startsWith("Line 2: / by zero.");
    }

    @Test
    void aRefusalIsShownAsItIs() throws InterruptedException {
        page.run("bike(\"nowhere.bike.json\")");
        assertThat(page.message("r1"))
                .startsWith("nowhere.bike.json is not bundled with the program.")
                .doesNotContain("Refusal");
    }

    @Test
    void theFirstFailureEndsTheRow() throws InterruptedException {
        page.run("System.out.println(\"before\");\nint q = 1 / 0;\nSystem.out.println(\"after\");");
        assertThat(page.row("r1").printed()).isEqualTo("before\n");
    }

    @Test
    void aRowThatUsesAFailedRowsNameSaysWhich() throws InterruptedException {
        page.run("int q = 1 / 0;", "int p = q + 1;");
        assertThat(page.state("r2")).isEqualTo(State.NOT_RUN);
        assertThat(page.message("r2")).isEqualTo("This row uses q from row \"q\", which failed.");
    }

    @Test
    void aNameDeclaredTwiceIsAnErrorAtBothPlaces() throws InterruptedException {
        page.run("int w = 3;", "double w = 4;");
        assertThat(page.message("r1"))
                .isEqualTo("w is declared here and also in row 2; a name can stand once on a page, so neither runs.");
        assertThat(page.message("r2"))
                .isEqualTo("w is declared here and also in row 1; a name can stand once on a page, so neither runs.");
    }

    @Test
    void methodsOfOneNameWithOtherParametersStandTogether() throws InterruptedException {
        page.run("int f(int x) { return x; }", "int f(int x, int y) { return x + y; }", "f(1) + f(1, 2)");
        assertThat(page.value("r3")).isEqualTo("4");
    }

    @Test
    void aNameDeclaredOnlyBelowIsSaidAtTheRowEvenInABody() throws InterruptedException {
        page.run("int f() { return late; }", "int late = 3;");
        assertThat(page.message("r1"))
                .isEqualTo("late is declared only below, in row 2; a row uses names of the rows above it.");
    }

    @Test
    void aCallThatMayNotBeAllowedInALoopOfDialsIsRefusedBeforeItRuns() throws InterruptedException {
        page.run("int a = 1;\nfor (int i = 0; i < 3; i++) dial(\"Head\", \"°\", 69, 74, 0.1, 71);");
        assertThat(page.message("r1")).startsWith("Line 2, column 29: dial(…) stands only as the whole initialiser");
        assertThat(page.state("r1")).isEqualTo(State.FAILED);
    }

    @Test
    void aDialReachedThroughAMethodReferenceIsRefusedWhenItRuns() throws InterruptedException {
        page.run("interface Six { double of(String a, String b, double c, double d, double e, double f); }\n"
                + "Six six = rakeline.prelude.Prelude::dial;\nsix.of(\"Head\", \"°\", 69, 74, 0.1, 71)");
        assertThat(page.message("r1")).startsWith("A dial stands only as the whole initialiser of a variable");
    }

    @Test
    void aWorkerSpeaksEnglishAndUtf8WhateverTheHostDoes() throws InterruptedException {
        page.run("String.format(\"%.1f\", 71.3) + java.nio.charset.Charset.defaultCharset()");
        assertThat(page.value("r1")).isEqualTo("\"71.3UTF-8\"");
    }

    @Test
    void theWorkerLoadsNoWidgetsAndNoPainters() throws Exception {
        page.run(
                "Bike xs = bike(\"demo-data/bikes/endurance-xs.bike.json\");",
                "draw(xs)",
                "measures(xs)",
                "ProcessHandle.current().pid()");
        assertThat(LoadedClasses.of(Long.parseLong(page.value("r4"))))
                .contains("rakeline.engine.jshell.Agent")
                .noneMatch(name -> name.startsWith("java.awt.") || name.startsWith("javax.swing."));
    }
}
