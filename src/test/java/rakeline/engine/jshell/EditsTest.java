package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import rakeline.engine.State;
import rakeline.worksheet.Worksheet;

/** Edits, waiting, running on request, stopping. */
@Tag("process")
class EditsTest {
    @RegisterExtension
    static final Running page = Running.standard();

    @Test
    void anEditRunsWhatDependsOnIt() throws InterruptedException {
        page.run("int a = 1;", "int b = a + 1;", "b * 10");
        assertThat(page.run("String a = \"x\";", "String b = a + 1;", "b + 10").value("r3"))
                .isEqualTo("\"x110\"");
    }

    @Test
    void eachEditMakesOneClassMoreHoweverManyThereWereBefore() throws InterruptedException {
        for (int teeth = 0; teeth < 5; teeth++) {
            page.run("class Ring { int teeth = " + teeth + "; }", "new Ring().getClass().getName()");
        }
        assertThat(page.value("r2")).matches("\"REPL\\.\\$JShell\\$\\d+v5\\$Ring\"");
    }

    @Test
    void anEditOfTypeAloneReachesUnchangedRows() throws InterruptedException {
        page.run("int a = 7;", "a / 2");
        assertThat(page.run("double a = 7;", "a / 2").value("r2")).isEqualTo("3.5");
    }

    @Test
    void aDeletedRowTakesItsNamesAway() throws InterruptedException {
        page.run(Pages.of(Pages.row("a", "int a = 1;"), Pages.row("b", "a + 1")));
        page.run(Pages.of(Pages.row("b", "a + 1")));
        assertThat(page.message("b")).startsWith("Line 1, column 1: nothing is called a here.");
    }

    @Test
    void aRowThatCannotRunNamesTheRowThatThisIsDueToByThePlaceWhereItIsNow() throws InterruptedException {
        String failing = "import java.time.Duration;\n1 / 0";
        page.run(Pages.of(Pages.row("a", "1"), Pages.row("b", failing), Pages.row("c", "Duration.ZERO")));
        page.run(Pages.of(Pages.row("b", failing), Pages.row("c", "Duration.ZERO")));
        assertThat(page.message("c")).isEqualTo("This row uses Duration from row 1, which failed.");
    }

    @Test
    void aRowMovedAboveWhatItUsesSaysSo() throws InterruptedException {
        page.run(Pages.of(Pages.row("a", "int a = 1;"), Pages.row("b", "a + 1")));
        page.run(Pages.of(Pages.row("b", "a + 1"), Pages.row("a", "int a = 1;")));
        assertThat(page.message("b")).startsWith("a is declared only below, in row 2");
    }

    @Test
    void aNewOverloadIsUsedByRowsThatAreNotEdited() throws InterruptedException {
        page.run(Pages.of(Pages.row("a", "String f(double x) { return \"double\"; }"), Pages.row("c", "f(1)")));
        page.run(Pages.of(
                Pages.row("a", "String f(double x) { return \"double\"; }"),
                Pages.row("b", "String f(int x) { return \"int\"; }"),
                Pages.row("c", "f(1)")));
        assertThat(page.value("c")).isEqualTo("\"int\"");
    }

    @Test
    void aMethodThatJavaDidNotAcceptIsInNoOtherRowsWay() throws InterruptedException {
        page.run("int a = 1;", "int f(int x) { return x + a; }", "String f(String x) { return x + a; }");
        page.run("int a = 1;", "int f(int x) { return x + 2; }", "String f(String x) { return x + gone; }");
        page.run("int a = 8;", "int f(int x) { return x + 2; }", "String f(String x) { return x + gone; }");
        assertThat(page.value("r1")).isEqualTo("8");
        assertThat(page.state("r2")).isEqualTo(State.FRESH);
        assertThat(page.message("r3")).contains("nothing is called gone here");
    }

    @Test
    void aRowThatJavaDidNotAcceptStandsAsItWasInAnotherWorker() throws InterruptedException {
        String early = "int one = 1;\nDuration.ofSeconds(one)";
        String counting = "class Bin { static int count; }\nBin.count += ";
        page.run(Pages.of(
                Pages.row("early", early),
                Pages.row("import", "import java.time.*;"),
                Pages.row("bin", counting + "1;")));
        page.run(Pages.of(
                Pages.row("early", early),
                Pages.row("import", "import java.time.*;"),
                Pages.row("bin", counting + "2;")));
        assertThat(page.message("early")).startsWith("Line 2, column 1: nothing is called Duration here.");
    }

    @Test
    void aStaticFieldBeginsAnewWhereAnImportHasRowsBelowItRunAgain() throws InterruptedException {
        for (String edited : new String[] {"int a = 1;", "int a = 2;"}) {
            page.run("class Bin { static int count; }", edited, "import java.time.*;", "Bin.count += 1;");
        }
        assertThat(page.value("r4")).isEqualTo("1");
    }

    @Test
    void aRowThatIsAskedToRunKnowsNoImportBelowIt() throws InterruptedException {
        page.run(Pages.of(
                Pages.row("early", "Duration.ofSeconds(1)"),
                Pages.row("import", "import java.time.*;"),
                Pages.row("late", "Duration.ofSeconds(2)")));
        page.session().runRow("early");
        page.settle();
        assertThat(page.message("early")).startsWith("Line 1, column 1: nothing is called Duration here.");
        assertThat(page.value("late")).isEqualTo("PT2S");
    }

    @Test
    void aWaitingRowWaitsAndItsDependantsSaySo() throws InterruptedException {
        page.run(Pages.of(Pages.waiting("a", "int a = 1;"), Pages.row("b", "a + 1")));
        assertThat(page.state("a")).isEqualTo(State.WAITING);
        assertThat(page.message("b")).isEqualTo("This row uses a from row \"a\", which is waiting.");
    }

    @Test
    void aWaitingRowRunsWhenAskedWithWhatFollows() throws InterruptedException {
        page.run(Pages.of(Pages.waiting("a", "int a = 1;"), Pages.row("b", "a + 1")));
        page.session().runRow("a");
        assertThat(page.settle().value("b")).isEqualTo("2");
    }

    @Test
    void aRowSetToWaitAfterAllRanWaits() throws InterruptedException {
        page.run(Pages.of(Pages.row("a", "1")));
        page.session().runAll();
        page.settle();
        assertThat(page.run(Pages.of(Pages.waiting("a", "2"))).state("a")).isEqualTo(State.OUT_OF_DATE);
    }

    @Test
    void runningARowRunsTheWaitingRowsThatItNeeds() throws InterruptedException {
        page.run(Pages.of(Pages.waiting("a", "int a = 1;"), Pages.waiting("b", "a + 1")));
        page.session().runRow("b");
        assertThat(page.settle().value("b")).isEqualTo("2");
    }

    @Test
    void aWaitingRowThatHasRunGoesOutOfDate() throws InterruptedException {
        Worksheet before = Pages.of(Pages.row("a", "int a = 1;"), Pages.waiting("b", "a + 1"));
        page.run(before);
        page.session().runRow("b");
        page.settle();
        page.run(Pages.of(Pages.row("a", "int a = 2;"), Pages.waiting("b", "a + 1")));
        assertThat(page.state("b")).isEqualTo(State.OUT_OF_DATE);
    }

    @Test
    void runAllStartsInAWorkerThatHasRunNothing() throws InterruptedException {
        page.run("System.setProperty(\"seen\", \"\" + System.getProperty(\"seen\"))", "System.getProperty(\"seen\")");
        page.session().runAll();
        assertThat(page.settle().value("r2")).isEqualTo("\"null\"");
    }

    @Test
    void runFromRunsTheRowAndAllBelow() throws InterruptedException {
        page.run("System.nanoTime()", "System.nanoTime()", "System.nanoTime()");
        String first = page.value("r1");
        String last = page.value("r3");
        page.session().runFrom("r2");
        page.settle();
        assertThat(page.value("r1")).isEqualTo(first);
        assertThat(page.value("r3")).isNotEqualTo(last);
    }

    @Test
    void aStopEndsTheRowAndLeavesTheRest() throws InterruptedException {
        page.session().show(Pages.of("while (true) {}", "1 + 1"));
        page.await("r1", State.RUNNING);
        page.session().stop();
        page.settle();
        assertThat(page.message("r1")).isEqualTo("This row was stopped.");
        page.session().runFrom("r2");
        assertThat(page.settle().value("r2")).isEqualTo("2");
    }

    @Test
    void sleepsParallelStreamsAndPrintingAreStopped() throws InterruptedException {
        page.run(Pages.of(
                Pages.limited("a", "Thread.sleep(60_000);", 1),
                Pages.limited("b", "IntStream.range(0, 64).parallel().forEach(i -> { while (true) {} });", 1),
                Pages.limited("c", "while (true) System.out.println(\"again\");", 1),
                Pages.row("d", "System.out.println(\"still here\");")));
        assertThat(page.outcomes().subList(0, 3))
                .allSatisfy(
                        row -> assertThat(row.message()).isEqualTo("This row was stopped at its time limit of 1 s."));
        assertThat(page.row("d").printed()).isEqualTo("still here\n");
    }

    @Test
    void editingARowThatNeverEndsEndsIt() throws InterruptedException {
        page.session().show(Pages.of("while (true) {}", "1 + 1"));
        page.await("r1", State.RUNNING);
        page.run("int calm = 1;", "1 + 1");
        assertThat(page.value("r1")).isEqualTo("1");
        assertThat(page.value("r2")).isEqualTo("2");
    }

    @Test
    void aStoppedRowLeavesNoHalfMadeChangeBehind() throws InterruptedException {
        page.run(Pages.of(
                Pages.row("a", "List<Integer> all = new ArrayList<>();"),
                Pages.limited("b", "all.add(1);\nwhile (true) {}", 1),
                Pages.row("c", "all.size()")));
        assertThat(page.value("c")).isEqualTo("0");
    }

    @Test
    @Timeout(60)
    void aStopWaitsUntilAClassIsInitialised(@TempDir Path folder) throws InterruptedException {
        Path begun = folder.resolve("begun");
        String slow = """
                class Slow {
                    static {
                        new java.io.File("%s").mkdir();
                        long end = System.nanoTime() + 500_000_000L;
                        while (System.nanoTime() < end) {}
                        System.out.println("whole");
                    }
                    static void go() {}
                }
                Slow.go();
                while (true) {}""";
        page.session().show(Pages.of(slow.formatted(begun)));
        while (Files.notExists(begun)) {
            Thread.onSpinWait();
        }
        page.session().stop();
        assertThat(page.settle().state("r1")).isEqualTo(State.STOPPED);
        assertThat(page.row("r1").printed()).isEqualToIgnoringNewLines("whole");
    }
}
