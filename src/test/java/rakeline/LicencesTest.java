package rakeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Everything that goes into the program's jar has its licence in there. */
@Tag("slow")
class LicencesTest {
    /** What only tests use; every other jar on their class path goes into the program. */
    private static final Pattern TEST_ONLY = Pattern.compile("junit.*|opentest4j|apiguardian-api|assertj-.*|archunit.*"
            + "|fest-.*|hamcrest-core|byte-buddy.*|slf4j-api|cacio-.*|jide-oss|jmh-core|jopt-simple|commons-math3"
            + "|validator|htmlparser|cssvalidator|jing|isorelax|galimatias|langdetect|salvation|icu4j|log4j|jetty-.*"
            + "|javax.servlet-api|httpclient|httpcore|commons-codec");

    private static final List<Entry> INDEX = index();

    private record Entry(Pattern artifacts, String name, List<String> texts) {
        static Entry of(String line) {
            String[] parts = Pattern.compile(";").split(line, -1);
            String name = parts[0].strip();
            return new Entry(
                    Pattern.compile(name.replace("*", ".*")),
                    name,
                    Pattern.compile(",")
                            .splitAsStream(parts[2])
                            .map(String::strip)
                            .toList());
        }
    }

    @Test
    void everyLibraryOfTheProgramIsInTheIndex() {
        assertThat(libraries())
                .isNotEmpty()
                .allSatisfy(library -> assertThat(entry(library)).isPresent());
    }

    @Test
    void everyLineOfTheIndexIsOfSomethingInTheProgram() {
        Set<String> libraries = libraries();
        assertThat(INDEX)
                .allSatisfy(entry -> assertThat(libraries)
                        .as(entry.name())
                        .anyMatch(library -> entry.artifacts().matcher(library).matches()));
    }

    @Test
    void everyTextOfTheIndexIsThere() {
        assertThat(INDEX.stream().flatMap(entry -> entry.texts().stream()))
                .allSatisfy(text -> assertThat(read(text)).isNotBlank());
    }

    @Test
    void everyTextThatIsThereIsInTheIndex() throws IOException, URISyntaxException {
        URL index = LicencesTest.class.getResource("licences/index.txt");
        try (Stream<Path> files = Files.list(Path.of(index.toURI()).getParent())) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> !name.equals("index.txt")))
                    .containsExactlyInAnyOrderElementsOf(INDEX.stream()
                            .flatMap(entry -> entry.texts().stream())
                            .collect(Collectors.toSet()));
        }
    }

    @Test
    void theTextOfTheProgramsOwnLicenceIsThatLicence() {
        assertThat(entry("rakeline").orElseThrow().texts())
                .singleElement()
                .satisfies(text -> assertThat(read(text)).contains("Apache License", "Version 2.0, January 2004"));
    }

    @Test
    void bothFontsHaveTheOpenFontLicence() {
        assertThat(List.of("inter-LICENSE.txt", "roboto-mono-LICENSE.txt"))
                .allSatisfy(text -> assertThat(read(text)).contains("SIL OPEN FONT LICENSE Version 1.1"));
    }

    @Test
    void theTextUnderWhichTheChartsComeIsThatLicence() {
        assertThat(entry("jfreechart").orElseThrow().texts())
                .anySatisfy(
                        text -> assertThat(read(text)).contains("GNU LESSER GENERAL PUBLIC LICENSE", "Version 2.1"));
    }

    /** The names of the jars that the program consists of, without versions, and its own. */
    private static Set<String> libraries() {
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Set<String> names = Pattern.compile(Pattern.quote(File.pathSeparator))
                .splitAsStream(classPath)
                .filter(path -> path.endsWith(".jar"))
                .map(path -> Path.of(path).getFileName().toString().replaceAll("-[0-9].*", ""))
                .filter(name -> !TEST_ONLY.matcher(name).matches())
                .collect(Collectors.toCollection(TreeSet::new));
        names.add("rakeline");
        names.addAll(typefaces());
        return names;
    }

    /** The families of the typefaces that lie in the program itself. */
    private static List<String> typefaces() {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/rakeline/figure/paint"))) {
            return files.map(file -> file.getFileName().toString().replaceAll("-.*", ""))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The line that fits best: the longest. */
    private static Optional<Entry> entry(String library) {
        return INDEX.stream()
                .filter(entry -> entry.artifacts().matcher(library).matches())
                .max(Comparator.comparingInt(entry -> entry.name().length()));
    }

    private static List<Entry> index() {
        return Arrays.stream(read("index.txt").split("\n", -1))
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(Entry::of)
                .toList();
    }

    private static String read(String text) {
        try (InputStream in = LicencesTest.class.getResourceAsStream("licences/" + text)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(text + " cannot be read", e);
        }
    }
}
