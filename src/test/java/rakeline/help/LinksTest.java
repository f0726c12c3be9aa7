package rakeline.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the documents point to is there. */
class LinksTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#\\s]+)[^)]*\\)");
    private static final long PICTURE_BYTES = 150_000;

    private static List<String> links(String file) throws IOException {
        return LINK.matcher(Files.readString(Path.of(file), StandardCharsets.UTF_8))
                .results()
                .map(found -> found.group(1))
                .filter(link -> !link.startsWith("https:"))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"README.md", "DEVELOPERS.md"})
    void everyRelativeLinkLeadsToAFile(String file) throws IOException {
        assertThat(links(file)).allSatisfy(link -> assertThat(Path.of(link)).isRegularFile());
    }

    @Test
    void theReadmeShowsTheWindowAndAFigureInSmallFiles() throws IOException {
        assertThat(links("README.md"))
                .contains("src/doc/window.png", "src/doc/held-trail.svg")
                .allSatisfy(link -> assertThat(Files.size(Path.of(link))).isLessThan(PICTURE_BYTES));
    }

    /** A blank line would end a table before its last rows. */
    @ParameterizedTest
    @ValueSource(strings = {"README.md", "DEVELOPERS.md"})
    void everyTableHasItsHeading(String file) throws IOException {
        List<String> lines = Files.readAllLines(Path.of(file), StandardCharsets.UTF_8);
        for (int i = 1; i < lines.size() - 1; i++) {
            if (lines.get(i).startsWith("|") && lines.get(i - 1).isBlank()) {
                assertThat(lines.get(i + 1)).as("%s, line %d", file, i + 2).startsWith("| ---");
            }
        }
    }
}
