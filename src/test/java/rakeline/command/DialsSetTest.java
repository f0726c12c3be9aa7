package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code run --set} takes what the dial takes, and nothing else. */
@Tag("process")
class DialsSetTest {
    private static final String BOUND = """
            {"format": "rakeline/worksheet", "version": 1, "title": "Hands", "rows": [
              {"id": "r1", "snippet": ["Bike own = bike(\\"demo-data/bikes/road-m.bike.json\\").with(\\"contact.handXMm\\", 464);"]},
              {"id": "r2", "snippet": ["double x = dial(\\"contact.handXMm\\", own, 500, 640);"]},
              {"id": "r3", "snippet": ["x + 1"]}
            ]}""";

    @TempDir
    Path folder;

    private String page;

    @BeforeEach
    void write() throws IOException {
        page = Files.writeString(folder.resolve("hands.rakeline"), BOUND).toString();
    }

    private CommandLineRun run(String... more) {
        return CommandLineRun.of(
                Stream.concat(Stream.of("run", page), Stream.of(more)).toArray(String[]::new));
    }

    @Test
    void aValueBetweenTheBikesOwnAndTheWrittenRangeIsTaken() {
        CommandLineRun run = run("--set", "x=470");
        assertThat(run.data()).contains("471");
        assertThat(run.code()).isZero();
    }

    @Test
    void aValueBeyondBothIsRefusedBeforeAnythingIsPrinted() {
        CommandLineRun run = run("--set", "x=463");
        assertThat(run.messages()).contains("--set x is 463; accepted in " + page + " is 464..640.");
        assertThat(run.data()).isEmpty();
        assertThat(run.code()).isEqualTo(2);
    }

    @Test
    void ofSeveralPagesNoneIsPrintedWhereOneRefuses() throws IOException {
        String other = Files.writeString(folder.resolve("other.rakeline"), BOUND.replace("464", "500"))
                .toString();
        CommandLineRun run = run(other, "--set", "x=470");
        assertThat(run.messages()).contains("accepted in " + other + " is 500..640.");
        assertThat(run.data()).isEmpty();
        assertThat(run.code()).isEqualTo(2);
    }
}
