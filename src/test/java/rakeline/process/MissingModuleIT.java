package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A Java that has everything but what a JDK adds. */
class MissingModuleIT {
    private static final String BIKE = "demo-data/bikes/road-m.bike.json";
    private static final Program PROGRAM = Program.inTheProject().with("--limit-modules", "java.se");

    @TempDir
    Path folder;

    @Test
    void runNamesTheModuleAndTheJava() {
        Path page = Pages.write(folder.resolve("page.rakeline"), "1 + 1");
        PROGRAM.run("run", page.toString()).isRefusedFor("jdk.jshell", System.getProperty("java.home"));
    }

    @Test
    void openNamesTheModuleAndTheJava() {
        PROGRAM.run("open").isRefusedFor("jdk.jshell", System.getProperty("java.home"));
    }

    @Test
    void aDialCannotBeLookedForWithoutTheModuleEither() {
        Path page = Pages.write(folder.resolve("page.rakeline"), "1 + 1");
        PROGRAM.run("run", page.toString(), "--set", "head=72").isRefusedFor("jdk.jshell");
    }

    @Test
    void checkNamesTheModuleForAWorksheet() {
        PROGRAM.run("check", "worksheets/welcome.rakeline").isRefusedFor("jdk.jshell");
    }

    @Test
    void measureStillWorks() {
        assertThat(PROGRAM.run("measure", BIKE).isDone().data()).contains("Trail");
    }

    @Test
    void sweepStillWorksAndDraws() {
        Path svg = folder.resolve("chart.svg");
        PROGRAM.run("sweep", BIKE, "--vary", "fork.offsetMm=40:50:1", "--track", "trailMm", "--svg", svg.toString())
                .isDone();
        assertThat(svg).content().contains("<svg");
    }
}
