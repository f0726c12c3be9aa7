package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whatever is done to a page, what it says is what a run from the top would say: the real reading, planning, document
 * and undo, over an executor that knows a small part of Java and keeps to what a compiler and a worker do.
 */
@Tag("slow")
class PlannerProofTest {
    private static final int HISTORIES = Integer.getInteger("soak.planner", 200);
    private static final int DEEDS = 40;
    private static final long FIRST_SEED = Long.getLong("soak.seed", 1);

    private final JShell shell = Shells.open(new NoEngine());
    private final Stopper stopper = new Stopper();

    @AfterEach
    void close() {
        shell.close();
        stopper.close();
    }

    @Test
    void afterAnyDeedThePageEqualsARunFromTheTop() {
        SourceReader reader = new SourceReader(shell.sourceCodeAnalysis());
        FakePage.Reading reading = new FakePage.Reading(reader::read, stopper);
        for (long seed = FIRST_SEED; seed < FIRST_SEED + HISTORIES; seed++) {
            long start = seed;
            List<Deed> deeds = Deed.history(new Random(seed), DEEDS);
            assertThat(FakeHistory.failure(reading, start, deeds))
                    .as(() -> told(reading, start, deeds))
                    .isEmpty();
        }
    }

    private static String told(FakePage.Reading reading, long seed, List<Deed> deeds) {
        List<Deed> fewest = Shrinker.fewest(
                deeds, some -> FakeHistory.failure(reading, seed, some).isPresent());
        return "seed " + seed + ", at least " + fewest.size() + " deeds are needed:\n"
                + fewest.stream().map(Deed::toString).collect(Collectors.joining("\n")) + "\n"
                + FakeHistory.failure(reading, seed, fewest).orElse("");
    }
}
