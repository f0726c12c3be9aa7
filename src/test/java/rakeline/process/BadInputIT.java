package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Input that cannot be read: one sentence that says where, exit 2, nothing printed, nothing changed. */
class BadInputIT {
    private static final int FIFTY_MEGABYTES = 50_000_000;
    private static final String BIKE = "bad.bike.json";
    private static final String PAGE = "bad.rakeline";

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}")
    @MethodSource("bikes")
    void aBikeIsRefused(String what, byte[] bytes, String words) throws IOException {
        Files.write(folder.resolve(BIKE), bytes);
        assertRefused(words, "measure", BIKE);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pages")
    void aWorksheetIsRefused(String what, byte[] bytes, String words) throws IOException {
        Files.write(folder.resolve(PAGE), bytes);
        assertRefused(words, "run", PAGE);
    }

    @Test
    void aFolderIsNoBike() throws IOException {
        Files.createDirectory(folder.resolve(BIKE));
        assertRefused(BIKE, "measure", BIKE);
    }

    @Test
    void aFolderIsNoWorksheet() throws IOException {
        Files.createDirectory(folder.resolve(PAGE));
        assertRefused(PAGE, "run", PAGE);
    }

    @Test
    void aFileThatIsNotThereIsNamed() throws IOException {
        assertRefused("none.rakeline", "run", "none.rakeline");
    }

    @Test
    void aByteOrderMarkAndLinesThatEndAsOnWindowsAreRead() throws IOException {
        Files.writeString(folder.resolve("crlf.bike.json"), "\uFEFF" + bike().replace("\n", "\r\n"));
        Program.in(folder).run("measure", "crlf.bike.json").isDone();
    }

    @Test
    void checkRefusesWhatRunRefuses() throws IOException {
        Files.writeString(folder.resolve(PAGE), "");
        assertRefused(PAGE, "check", PAGE);
    }

    static Stream<Arguments> bikes() throws IOException {
        return Stream.of(
                refused("empty", "", "empty"),
                Arguments.of("binary", binary(), BIKE),
                refused("deeply nested", "[".repeat(200_000), BIKE),
                Arguments.of("50 MB", large(), "larger than"),
                changed("a missing key", bike -> without(bike, "headAngleDeg"), "frame.headAngleDeg"),
                changed("NaN", bike -> value(bike, "NaN"), "frame.headAngleDeg"),
                changed("a decimal comma", bike -> value(bike, "71,3"), "decimal point"),
                changed("a decimal comma in a text", bike -> value(bike, "\"71,3\""), "decimal point"),
                changed("a unit in a number", bike -> value(bike, "\"71.3 mm\""), "frame.headAngleDeg"),
                changed("a doubled key", bike -> value(bike, "71.3, \"headAngleDeg\": 72"), "headAngleDeg"),
                changed("out of range", bike -> value(bike, "95"), "50..85"));
    }

    static Stream<Arguments> pages() {
        String page = Pages.text("1 + 1");
        return Stream.of(
                refused("empty", "", "empty"),
                Arguments.of("binary", binary(), PAGE),
                refused("deeply nested", "{\"rows\":" + "[".repeat(200_000), PAGE),
                Arguments.of("50 MB", large(), "larger than"),
                refused("a doubled row id", Pages.text("1", "2").replace("\"r1\"", "\"r0\""), "r0"),
                refused("a doubled key", page.replace("{\"", "{\"title\":\"A\",\"title\":\"B\",\""), "title"),
                refused("an unknown key", page.replaceFirst("\"title\"", "\"titel\""), "titel"),
                refused("a newer version", page.replace("\"version\":1", "\"version\":99"), "99"));
    }

    private void assertRefused(String words, String... command) throws IOException {
        Map<Path, FileTime> before = files();
        Program.in(folder).run(command).isRefusedFor(words, command[1]);
        assertThat(files()).isEqualTo(before);
    }

    private Map<Path, FileTime> files() throws IOException {
        Map<Path, FileTime> times = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.toList()) {
                times.put(file, Files.getLastModifiedTime(file));
            }
        }
        return times;
    }

    private static Arguments refused(String what, String text, String words) {
        return Arguments.of(what, text.getBytes(StandardCharsets.UTF_8), words);
    }

    private static Arguments changed(String what, UnaryOperator<String> change, String words) throws IOException {
        return refused(what, change.apply(bike()), words);
    }

    private static byte[] binary() {
        return new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, (byte) 0xFF, (byte) 0xFE};
    }

    private static byte[] large() {
        byte[] blanks = new byte[FIFTY_MEGABYTES];
        Arrays.fill(blanks, (byte) ' ');
        return blanks;
    }

    private static String bike() throws IOException {
        return Files.readString(Path.of("demo-data/bikes/road-m.bike.json"));
    }

    private static String value(String bike, String value) {
        return bike.replaceFirst("\"headAngleDeg\": [0-9.]+", "\"headAngleDeg\": " + value);
    }

    private static String without(String bike, String name) {
        return bike.replaceFirst("\"" + name + "\": [0-9.]+,", "");
    }
}
