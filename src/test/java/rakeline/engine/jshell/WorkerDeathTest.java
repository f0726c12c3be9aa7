package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledForJreRange;
import org.junit.jupiter.api.condition.JRE;
import org.junit.jupiter.api.extension.RegisterExtension;
import rakeline.engine.Session;
import rakeline.engine.State;
import rakeline.worksheet.Row;

/** Rows that end their worker, or will not end: each is named, rows below run, values above are there again. */
@Tag("process")
class WorkerDeathTest {
    @RegisterExtension
    static final Running page =
            new Running(Session.Settings.standard().withHeap(128).withTimeLimit(Duration.ofSeconds(20)));

    private static void runBetween(String deadly) throws InterruptedException {
        runBetween(Pages.row("r2", deadly));
    }

    private static void runBetween(Row deadly) throws InterruptedException {
        page.run(Pages.of(
                Pages.row("r1", "double before = 20 + 1;"), deadly, Pages.row("r3", "double after = before * 2;")));
        assertThat(page.value("r1")).isEqualTo("21");
    }

    private static void assertDied(String what) throws InterruptedException {
        assertThat(page.state("r2")).isEqualTo(State.FAILED);
        assertThat(page.message("r2")).isEqualTo("This row " + what + ".");
        assertThat(page.replaced()).isEqualTo("Row 2 " + what + "; another took over.");
        assertThat(page.value("r3")).isEqualTo("42");
    }

    @Test
    void aRowThatCallsExit() throws InterruptedException {
        runBetween("System.exit(7);");
        assertDied("called System.exit(7), which ends the worker");
    }

    @Test
    void aRowThatRunsOutOfMemory() throws InterruptedException {
        runBetween("{ var all = new ArrayList<double[]>(); while (true) all.add(new double[1_000_000]); }");
        assertDied("ran out of memory; a worker may use 128 MB");
    }

    @Test
    void aRowThatMeetsAClassWhichCouldNotBeInitialised() throws InterruptedException {
        runBetween("""
                System.setProperty("java.util.prefs.PreferencesFactory", "none");
                try { java.util.prefs.Preferences.userRoot(); } catch (InternalError e) { }
                java.util.prefs.Preferences.userRoot();""");
        assertThat(page.message("r2"))
                .isEqualTo("This row met a class that something before it had broken off; run it once more.");
        assertThat(page.replaced()).startsWith("Row 2 met a class");
        assertThat(page.value("r3")).isEqualTo("42");
    }

    @Test
    void aRowThatHaltsJava() throws InterruptedException {
        runBetween("Runtime.getRuntime().halt(8);");
        assertDied("ended its worker at once, with exit value 8, as Runtime.halt or a crash of Java itself does");
    }

    /** Newer versions of Java do not let a row do so. */
    @Test
    @EnabledForJreRange(max = JRE.JAVA_19)
    void aRowThatEndsTheThreadWhichRunsRows() throws InterruptedException {
        page.run(
                "Thread rows = Thread.currentThread();",
                "new Thread(() -> { while (rows.isAlive()) { rows.stop();"
                        + " java.util.concurrent.locks.LockSupport.parkNanos(5_000_000); } }).start();");
        assertThat(page.replaced()).endsWith("another took over.");
        assertThat(page.run("int after = 21 * 2;").value("r1")).isEqualTo("42");
    }

    @Test
    void aRowWhoseWorkerIsKilledFromOutside() throws InterruptedException {
        page.session()
                .show(Pages.of(
                        "double before = 20 + 1;",
                        "{ System.out.println(ProcessHandle.current().pid()); while (true) Thread.onSpinWait(); }",
                        "double after = before * 2;"));
        page.await("r2", State.RUNNING);
        workers().filter(ProcessHandle::isAlive).forEach(ProcessHandle::destroyForcibly);
        page.settle();
        assertDied("was running when its worker was killed from outside");
    }

    private static java.util.stream.Stream<ProcessHandle> workers() {
        return ProcessHandle.current().children();
    }

    @Test
    void aStackThatOverflows() throws InterruptedException {
        runBetween("int deeper(int n) { return deeper(n + 1) + 1; }\ndeeper(0)");
        assertThat(page.state("r2")).isEqualTo(State.FAILED);
        assertThat(page.message("r2"))
                .isEqualTo("Line 1: the code calls itself without end, until the stack is full.\n"
                        + "java.lang.StackOverflowError");
        assertThat(page.value("r3")).isEqualTo("42");
    }

    @Test
    void anEndlessLoop() throws InterruptedException {
        runBetween(Pages.limited("r2", "while (true) {}", 1));
        assertThat(page.state("r2")).isEqualTo(State.STOPPED);
        assertThat(page.message("r2")).isEqualTo("This row was stopped at its time limit of 1 s.");
        assertThat(page.value("r3")).isEqualTo("42");
    }

    @Test
    void aLoopThatCatchesEverything() throws InterruptedException {
        runBetween(Pages.limited("r2", "while (true) { try { while (true) {} } catch (Throwable all) {} }", 1));
        assertThat(page.state("r2")).isEqualTo(State.STOPPED);
        assertThat(page.message("r2"))
                .isEqualTo("This row was stopped at its time limit of 1 s; it did not stop when asked, so its worker"
                        + " was ended.");
        assertThat(page.replaced()).startsWith("Row 2 did not stop when asked");
        assertThat(page.value("r3")).isEqualTo("42");
    }

    @Test
    void aDeadlock() throws InterruptedException {
        runBetween(Pages.limited("r2", """
                Object left = new Object(), right = new Object();
                var both = new java.util.concurrent.CountDownLatch(2);
                void hold(Object first, Object second) throws InterruptedException {
                    synchronized (first) {
                        both.countDown();
                        both.await();
                        synchronized (second) {}
                    }
                }
                new Thread(() -> { try { hold(left, right); } catch (InterruptedException e) {} }).start();
                hold(right, left);""", 1));
        assertThat(page.state("r2")).isEqualTo(State.STOPPED);
        assertThat(page.message("r2")).contains("did not stop when asked");
        assertThat(page.value("r3")).isEqualTo("42");
    }
}
