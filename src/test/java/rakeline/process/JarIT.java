package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the jar holds. */
class JarIT {
    private static JarFile jar;

    @BeforeAll
    static void open() throws IOException {
        jar = new JarFile(Path.of(System.getProperty("rakeline.jar")).toFile());
    }

    @AfterAll
    static void close() throws IOException {
        jar.close();
    }

    @Test
    void itHoldsTheLicenceOfTheProgram() {
        assertThat(names()).contains("rakeline/licences/Apache-2.0.txt");
    }

    /** Whatever the sources hold that the program shows or reads, file by file. */
    @ParameterizedTest
    @CsvSource({
        "worksheets, rakeline/bundled/worksheets",
        "demo-data, rakeline/bundled/demo-data",
        "src/main/resources/rakeline/licences, rakeline/licences",
        "src/main/resources/rakeline/shell/guide, rakeline/shell/guide",
        "src/main/resources/rakeline/handout, rakeline/handout",
        "src/main/resources/rakeline/catalogue, rakeline/catalogue"
    })
    void itHoldsEveryFileOfAFolder(Path folder, String inTheJar) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            List<String> wanted = files.filter(Files::isRegularFile)
                    .map(file ->
                            inTheJar + "/" + folder.relativize(file).toString().replace('\\', '/'))
                    .toList();
            assertThat(wanted).isNotEmpty();
            assertThat(names()).containsAll(wanted);
        }
    }

    @Test
    void itHoldsItsTypefaces() {
        assertThat(names())
                .anyMatch(name -> name.matches(".*inter/Inter-Regular\\.[ot]tf"))
                .anyMatch(name -> name.matches(".*/RobotoMono-Regular\\.[ot]tf"))
                .anyMatch(name -> name.matches(".*/RobotoMono-Bold\\.[ot]tf"))
                .anyMatch(name -> name.matches(".*/RobotoMono-Italic\\.[ot]tf"));
    }

    @Test
    void itHoldsThePageOfEveryInputAndMeasure() throws IOException {
        assertThat(text("rakeline/help/keys.html")).contains("frame.headAngleDeg", "toeRoomMm", "<svg");
    }

    @Test
    void itHoldsWhatHelpSaysOfTheWordsOfTheRows() throws IOException {
        assertThat(text("rakeline/help/manual.tsv"))
                .contains("Prelude.sweep(BikeOrRide)\t", "Sweeping.hold(String,double)\t");
    }

    @Test
    void noLibrarysModuleSpeaksForTheWhole() {
        assertThat(names()).noneMatch(name -> name.endsWith("module-info.class"));
    }

    @Test
    void noLibrarysSignatureIsLeft() {
        assertThat(names()).noneMatch(name -> name.matches("META-INF/.*\\.(SF|RSA|DSA)"));
    }

    @Test
    void classesForNewerJavasAreFound() throws IOException {
        assertThat(jar.getManifest().getMainAttributes().getValue("Multi-Release"))
                .isEqualTo("true");
    }

    /** Two builds of one source are to be the same bytes; libraries keep the times that they came with. */
    @Test
    void everyEntryOfOurOwnHasTheTimeThatThePomFixes() {
        assertThat(jar.stream()
                        .filter(entry -> entry.getName().startsWith("rakeline/"))
                        .map(ZipEntry::getTimeLocal)
                        .distinct())
                .hasSize(1);
    }

    @Test
    void noEntryIsThereTwice() {
        assertThat(names()).doesNotHaveDuplicates();
    }

    private static String text(String name) throws IOException {
        try (InputStream in = jar.getInputStream(jar.getEntry(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<String> names() {
        return jar.stream().map(ZipEntry::getName).toList();
    }
}
