package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rakeline.engine.State;

/** Threads that rows leave running are said and bounded, and do not meddle with what other rows print. */
@Tag("process")
class RowThreadsTest {
    private static final String SLEEP = """
            void sleep() { try { Thread.sleep(1_000_000); } catch (InterruptedException e) { } }
            """;

    @RegisterExtension
    static final Running page = Running.standard();

    /** Anew: what other pages have left running ends with their worker. */
    @BeforeEach
    void inAWorkerOfItsOwn() throws InterruptedException {
        page.run("1");
        page.session().runAll();
        page.settle();
        page.forgetSaid();
    }

    @Test
    void aRowThatLeavesAThreadRunningSaysSo() throws InterruptedException {
        page.run(SLEEP + "new Thread(() -> sleep()).start();", "1 + 1");
        assertThat(page.message("r1")).isEqualTo("This row left a thread running.");
        assertThat(page.state("r1")).isEqualTo(State.FRESH);
        assertThat(page.message("r2")).isEmpty();
    }

    @Test
    void aThreadThatEndsWithTheRowIsNotSaid() throws InterruptedException {
        page.run("""
                var crew = java.util.concurrent.Executors.newFixedThreadPool(8);
                var sum = crew.submit(() -> 40 + 2).get();
                crew.shutdown();
                sum""", "IntStream.range(0, 100_000).parallel().map(i -> i % 7).sum()");
        assertThat(page.message("r1")).isEmpty();
        assertThat(page.value("r2")).isEqualTo("299995");
        assertThat(page.message("r2")).isEmpty();
    }

    @Test
    void whatRunsOnInJavasCommonPoolIsSaidToo() throws InterruptedException {
        page.run(SLEEP + "var f = java.util.concurrent.CompletableFuture.runAsync(() -> sleep());\nf.isDone()");
        assertThat(page.message("r1")).isEqualTo("This row left a thread running.");
    }

    @Test
    void aRowThatLeavesTooManyEndsItsWorker() throws InterruptedException {
        page.run(
                "int before = 20;",
                SLEEP + "for (int i = 0; i < 65; i++) new Thread(() -> sleep()).start();",
                "before");
        assertThat(page.state("r2")).isEqualTo(State.FAILED);
        assertThat(page.message("r2"))
                .isEqualTo("This row left 65 threads running; at most 64 may run on when a row ends, so its worker was"
                        + " ended.");
        assertThat(page.replaced()).isEqualTo("Row \"sleep\" left 65 threads running; another took over.");
        assertThat(page.value("r3")).isEqualTo("20");
    }

    @Test
    void aRowThatStartsThreadsWithoutEndIsEnded() throws InterruptedException {
        page.run(
                "int before = 20;",
                SLEEP + "while (true) { new Thread(() -> sleep()).start(); Thread.sleep(1); }",
                "before");
        assertThat(page.state("r2")).isEqualTo(State.FAILED);
        assertThat(page.message("r2")).isEqualTo("This row had more than 1000 threads running at once.");
        assertThat(page.value("r3")).isEqualTo("20");
    }

    @Test
    void threadsOfRunsThatNoLongerCountEndOnceTheyAreTooMany() throws InterruptedException {
        page.run(
                "double d = dial(\"d\", \"\", 0, 9, 1, 0);",
                SLEEP + "for (int i = 0; i < 25 + 0 * d; i++) new Thread(() -> sleep()).start();");
        for (int i = 1; i <= 3; i++) {
            page.session().dial("d", i);
            page.settle();
        }
        assertThat(page.replaced())
                .isEqualTo("Row \"sleep\" ran again and again and left threads running each time; another worker took"
                        + " over.");
        assertThat(page.message("r2")).isEqualTo("This row left 25 threads running.");
    }

    @Test
    void aStoppedRowsThreadsEndWithIt() throws InterruptedException {
        page.run(Pages.of(Pages.limited("r1", SLEEP + "new Thread(() -> sleep()).start();\nwhile (true) {}", 1)));
        assertThat(page.state("r1")).isEqualTo(State.STOPPED);
        assertThat(page.replaced())
                .isEqualTo("Row \"sleep\" was stopped and had left threads running; another worker took over.");
    }

    @Test
    void whatAnEarlierRowsThreadPrintsIsNotTheNextRows() throws InterruptedException {
        page.run("""
                var go = new java.util.concurrent.CountDownLatch(1);
                var late = new Thread(() -> {
                    try { go.await(); } catch (InterruptedException e) { }
                    System.out.println("late");
                });
                late.start();""", "go.countDown();\nlate.join();\nSystem.out.println(\"mine\");");
        assertThat(page.row("r2").printed()).isEqualTo("mine\n");
    }
}
