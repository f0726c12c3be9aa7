package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rakeline.engine.Outcome;
import rakeline.engine.Session;
import rakeline.worksheet.Worksheet;

/** The real process does what the small language says, row by row, and after whatever is done to a page. */
@Tag("process")
@Tag("soak")
class ProcessProofTest {
    private static final int ROWS = Integer.getInteger("soak.rows", 1000);
    private static final int HISTORIES = Integer.getInteger("soak.process", 20);
    private static final int FRESH_RUNS = 5;
    private static final int DEEDS = 8;
    private static final long FIRST_SEED = Long.getLong("soak.seed", 1);

    private static JShell shell;
    private static Stopper stopper;
    private static FakePage.Reading reading;
    private static Running page;

    @BeforeAll
    static void open() {
        shell = Shells.open(new NoEngine());
        stopper = new Stopper();
        SourceReader reader = new SourceReader(shell.sourceCodeAnalysis());
        reading = new FakePage.Reading(reader::read, stopper);
        page = Running.standard();
    }

    @AfterAll
    static void close() {
        page.close();
        stopper.close();
        shell.close();
    }

    @Test
    void everyRowDoesWhatTheSmallLanguageSays() throws InterruptedException {
        int rows = 0;
        for (long seed = FIRST_SEED; rows < ROWS; seed++) {
            Worksheet sheet = Deed.start(seed, reading.language());
            rows += sheet.rows().size();
            List<Outcome> found = page.run(sheet).outcomes();
            List<Outcome> expected = FakePage.fresh(reading, sheet, Set.of(), Set.of());
            assertThat(Difference.between(Difference.withoutJavasWords(found), Difference.withoutJavasWords(expected)))
                    .as("seed " + seed + "\n" + FakeHistory.words(sheet))
                    .isEmpty();
        }
    }

    @Test
    void afterAnyDeedThePageEqualsARunFromTheTop() throws InterruptedException, IOException {
        for (long seed = FIRST_SEED; seed < FIRST_SEED + HISTORIES; seed++) {
            List<Deed> deeds = Deed.history(new Random(seed), DEEDS);
            Optional<String> failure = RealHistory.failure(reading, page, seed, deeds);
            if (failure.isPresent()) {
                throw new AssertionError(failure.get() + "\n" + told(seed, deeds));
            }
            if (seed < FIRST_SEED + FRESH_RUNS) {
                assertEqualsAFreshRun(seed);
            }
        }
    }

    private static void assertEqualsAFreshRun(long seed) throws InterruptedException {
        List<Outcome> before = page.outcomes();
        page.session().runAll();
        List<Outcome> fresh = page.settle().outcomes();
        assertThat(Difference.between(before, fresh)).as("seed " + seed).isEmpty();
    }

    private static String told(long seed, List<Deed> deeds) {
        List<Deed> fewest = Shrinker.fewest(deeds, some -> fails(seed, some));
        return "seed " + seed + ", at least " + fewest.size() + " deeds are needed:\n"
                + fewest.stream().map(Deed::toString).collect(Collectors.joining("\n"));
    }

    private static boolean fails(long seed, List<Deed> deeds) {
        try (Running another = new Running(Session.Settings.standard())) {
            return RealHistory.failure(reading, another, seed, deeds).isPresent();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
