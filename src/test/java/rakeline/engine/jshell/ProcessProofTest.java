package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import jdk.jshell.JShell;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rakeline.engine.Outcome;
import rakeline.engine.Session;
import rakeline.worksheet.Worksheet;

/** The real process does what the small language says, row by row, and after whatever is done to a page. */
@Tag("process")
@Tag("slow")
class ProcessProofTest {
    private static final int ROWS = Integer.getInteger("soak.rows", 300);
    private static final int HISTORIES = Integer.getInteger("soak.process", 6);
    private static final int FRESH_RUNS = 5;
    private static final int DEEDS = 8;
    private static final long FIRST_SEED = Long.getLong("soak.seed", 1);

    /** Each lives through its share of the proof, in a session of its own. */
    private static final int PROVERS = 2;

    @Test
    void everyRowDoesWhatTheSmallLanguageSays() {
        together(prover -> prover.runRows(ROWS / PROVERS));
    }

    @Test
    void afterAnyDeedThePageEqualsARunFromTheTop() {
        together(prover -> prover.liveThrough(HISTORIES / PROVERS));
    }

    private interface Proof {
        void go(Prover prover) throws InterruptedException, IOException;
    }

    private static void together(Proof proof) {
        IntStream.range(0, PROVERS).parallel().forEach(i -> {
            try (Prover prover = new Prover(FIRST_SEED + i)) {
                proof.go(prover);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
    }

    /** Goes through every other seed. */
    private static final class Prover implements AutoCloseable {
        private final long first;
        private final JShell shell = Shells.open(new NoEngine());
        private final Stopper stopper = new Stopper();
        private final FakePage.Reading reading =
                new FakePage.Reading(new SourceReader(shell.sourceCodeAnalysis())::read, stopper);
        private final Running page = Running.standard();

        Prover(long first) {
            this.first = first;
        }

        @Override
        public void close() {
            page.close();
            stopper.close();
            shell.close();
        }

        void runRows(int count) throws InterruptedException {
            int rows = 0;
            for (long seed = first; rows < count; seed += PROVERS) {
                Worksheet sheet = Deed.start(seed, reading.language());
                rows += sheet.rows().size();
                List<Outcome> found = page.run(sheet).outcomes();
                List<Outcome> expected = FakePage.fresh(reading, sheet, Set.of(), Set.of());
                assertThat(Difference.between(
                                Difference.withoutJavasWords(found), Difference.withoutJavasWords(expected)))
                        .as("seed " + seed + "\n" + FakeHistory.words(sheet))
                        .isEmpty();
            }
        }

        void liveThrough(int count) throws InterruptedException, IOException {
            for (int i = 0; i < count; i++) {
                long seed = first + (long) i * PROVERS;
                List<Deed> deeds = Deed.history(new Random(seed), DEEDS);
                Optional<String> failure = RealHistory.failure(reading, page, seed, deeds);
                if (failure.isPresent()) {
                    throw new AssertionError(failure.get() + "\n" + told(seed, deeds));
                }
                if (i < FRESH_RUNS) {
                    assertEqualsAFreshRun(seed);
                }
            }
        }

        private void assertEqualsAFreshRun(long seed) throws InterruptedException {
            List<Outcome> before = page.outcomes();
            page.session().runAll();
            List<Outcome> fresh = page.settle().outcomes();
            assertThat(Difference.between(before, fresh)).as("seed " + seed).isEmpty();
        }

        private String told(long seed, List<Deed> deeds) {
            List<Deed> fewest = Shrinker.fewest(deeds, some -> fails(seed, some));
            return "seed " + seed + ", at least " + fewest.size() + " deeds are needed:\n"
                    + fewest.stream().map(Deed::toString).collect(Collectors.joining("\n"));
        }

        private boolean fails(long seed, List<Deed> deeds) {
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
}
