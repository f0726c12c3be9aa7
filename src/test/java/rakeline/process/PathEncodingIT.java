package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A path that the platform's encoding cannot name. */
@EnabledOnOs(OS.LINUX)
class PathEncodingIT {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "measure né.json",
                "run né.rakeline",
                "check né.rakeline",
                "check né.bike.json",
                "open né.rakeline",
                "né.rakeline",
                "sweep small.bike.json --vary fork.offsetMm=40:50:1 --track trailMm --csv né.csv",
                "sweep small.bike.json --vary fork.offsetMm=40:50:1 --track trailMm --svg né.svg",
                "run small.rakeline --out né"
            })
    void isRefused(String command) throws Exception {
        Pages.write(folder.resolve("small.rakeline"), "1 + 1");
        java.nio.file.Files.copy(Path.of("demo-data/bikes/road-m.bike.json"), folder.resolve("small.bike.json"));
        Program.in(folder).under("C").run(command.split(" ", -1)).isRefusedFor("encoding", "UTF-8");
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("small.rakeline", "small.bike.json");
    }
}
