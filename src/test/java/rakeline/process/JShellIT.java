package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The library in the JDK's own jshell, without a worksheet. */
class JShellIT {
    private static final String BIKE = "Bike xs = bike(\"demo-data/bikes/road-xs.bike.json\")";

    @TempDir
    Path folder;

    private Ended type(String... lines) {
        String[] all = new String[lines.length + 1];
        all[0] = "import rakeline.geometry.*; import static rakeline.prelude.Prelude.*;"
                + " import static rakeline.prelude.Riders.*; import static rakeline.geometry.Inputs.*;"
                + " import static rakeline.geometry.Measures.*;";
        System.arraycopy(lines, 0, all, 1, lines.length);
        return Program.in(folder).runInJShell(all);
    }

    @Test
    void bikesRidersMeasuresAndSweepsWork() throws Exception {
        Files.copy(Path.of("demo-data/bikes/road-m.bike.json"), folder.resolve("mine.bike.json"));
        Ended ended = type(
                BIKE,
                "System.out.println(\"trail \" + measure(xs, TRAIL))",
                "System.out.println(bike(\"mine.bike.json\").name())",
                "System.out.println(riders().size() + \" riders\")",
                "System.out.println(sweep(xs).over(HEAD_ANGLE, 69, 74).track(TRAIL).table().columns().size() + \" columns\")",
                "System.out.println(measures(xs).columns().get(0).values().size())");
        assertThat(ended.code()).as(ended.messages()).isZero();
        assertThat(ended.data())
                .contains("trail 6", "Road M", " riders", "2 columns")
                .doesNotContain("Exception");
    }

    @Test
    void aDialStandsWhereItStartsAndItIsSaid() {
        Ended ended = type(BIKE, "System.out.println(\"at \" + dial(HEAD_ANGLE, xs, 69, 74))");
        assertThat(ended.data()).contains("at 71.3");
        assertThat(ended.data() + ended.messages())
                .contains("Outside a worksheet nothing moves a dial: \"Head angle\" stays where it starts, at 71.3°.");
    }

    @Test
    void aPickerTakesItsFirstAndItIsSaid() {
        Ended ended = type("System.out.println(pick(\"Bike\", bikes()).name())");
        assertThat(ended.data() + ended.messages())
                .contains("Outside a worksheet nobody chooses: \"Bike\" is the first, demo-data/bikes/");
    }

    @Test
    void aFileThatIsNotThereIsRefusedWithThePlacesThatWereLookedAt() {
        assertThat(type("bike(\"nowhere.bike.json\")").messages())
                .contains("nowhere.bike.json is neither in", "nor bundled with the program.")
                .doesNotContain("NullPointer");
    }
}
