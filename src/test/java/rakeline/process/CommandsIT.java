package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exit codes and clean streams of the commands that run no rows. */
class CommandsIT {
    private static final String BIKE = "demo-data/bikes/road-xs.bike.json";
    private static final Program PROGRAM = Program.inTheProject();

    @TempDir
    Path folder;

    @Test
    void measurePrintsJsonAlone() {
        Ended ended = PROGRAM.run("measure", BIKE, "--set", "crank.lengthMm=160", "--json");
        assertThat(ended.isDone().objects()).hasSize(1);
        assertThat(ended.objects().get(0).at("/measures/trailMm").isDouble()).isTrue();
    }

    @Test
    void refitPrintsBeforeAndAfter() {
        Ended ended = PROGRAM.run("refit", BIKE, "--set", "fork.axleToCrownMm=394", "--json");
        assertThat(ended.isDone().objects().get(0).fieldNames()).toIterable().contains("before", "after");
    }

    @Test
    void aSweepsCsvIsAllThereIsOnStandardOutput() {
        Ended ended = PROGRAM.run(
                "sweep", BIKE, "--vary", "frame.headAngleDeg=69:74:1", "--track", "trailMm,wheelbaseMm", "--csv", "-");
        assertThat(ended.isDone().data())
                .startsWith("frame.headAngleDeg,trailMm,wheelbaseMm")
                .hasLineCount(7);
    }

    @Test
    void aFigureNeedsNoDisplayWhateverIsNamed(@TempDir Path folder) {
        Path svg = folder.resolve("a.svg");
        PROGRAM.on(":987")
                .run(
                        "sweep",
                        BIKE,
                        "--vary",
                        "frame.headAngleDeg=69:74:1",
                        "--track",
                        "trailMm",
                        "--svg",
                        svg.toString())
                .isDone();
        assertThat(svg).exists();
    }

    @Test
    void aDisplayThatCannotBeReachedIsSaid() {
        Ended ended = PROGRAM.on(":987").run("open");
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.messages())
                .startsWith("the display that is named cannot be reached: ")
                .hasLineCount(1);
    }

    @Test
    void theReasonOfAGapGoesToStandardError() {
        Ended ended = PROGRAM.run(
                "sweep",
                BIKE,
                "--vary",
                "frame.headAngleDeg=69:74:1",
                "--hold",
                "trailMm=300",
                "--by",
                "fork.offsetMm",
                "--track",
                "wheelbaseMm",
                "--csv",
                "-");
        assertThat(ended.code()).isZero();
        assertThat(ended.data()).contains("69,\n").hasLineCount(7);
        assertThat(ended.messages()).contains("no fork offset of -100..120 mm").hasLineCount(6);
    }

    @Test
    void aSweepThatGoesNowhereIsRefused() {
        PROGRAM.run("sweep", BIKE, "--vary", "fork.offsetMm=45:45:1", "--track", "trailMm")
                .isRefusedFor("45");
    }

    @Test
    void aSnippetThatDoesNotParseIsFoundByCheckAndNotRun() {
        Path mark = folder.resolve("ran");
        Path page = Pages.write(folder.resolve("page.rakeline"), Pages.leave(mark), "int x = ;");
        Ended ended = PROGRAM.run("check", page.toString());
        assertThat(ended.code()).isEqualTo(1);
        assertThat(ended.data()).isEmpty();
        assertThat(ended.messages()).contains("page.rakeline, row 2: Line 1");
        assertThat(mark).doesNotExist();
    }

    @Test
    void wrongUseIsRefused() {
        PROGRAM.run("measure").isRefusedFor("BIKE", "--help");
    }

    @Test
    void helpIsData() {
        assertThat(PROGRAM.run("sweep", "--help").isDone().data()).contains("--vary");
    }

    @Test
    void theVersionIsTheBuilds() {
        assertThat(PROGRAM.run("--version").isDone().data()).matches("Rakeline \\d+\\.\\d+\\.\\d+\\R");
    }
}
