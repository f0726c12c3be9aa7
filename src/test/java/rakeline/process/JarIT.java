package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

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

    @Test
    void itHoldsTheWorksheetsAndTheBikes() {
        assertThat(names())
                .contains(
                        "rakeline/bundled/worksheets/welcome.rakeline",
                        "rakeline/bundled/demo-data/bikes/road-m.bike.json");
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

    private static List<String> names() {
        return jar.stream().map(ZipEntry::getName).toList();
    }
}
