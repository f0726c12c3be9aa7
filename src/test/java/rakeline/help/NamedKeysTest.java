package rakeline.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.geometry.parts.Category;
import rakeline.rider.RiderInputs;
import rakeline.study.Vocabulary;

/** What is written for people names only keys that there are. */
class NamedKeysTest {
    /** A word in two cases that ends in a unit, with its groups before it. */
    private static final Pattern KEY = Pattern.compile(
            "(?<![\\w.…])(?:[a-z][A-Za-z]*\\.)*[a-z][A-Za-z]*(?:Mm|Deg|Kmh|Mps|Percent|Kg|PerM2|NmPerRad)\\b(?![\\w(])");

    /** What a note is filled with: the row's name, then what of it. */
    private static final Pattern OF_A_ROW = Pattern.compile("\\{\\{[\\w-]+\\.");

    private static final Set<String> KNOWN = known();

    private static Set<String> known() {
        Set<String> known = new HashSet<>(Vocabulary.standard().keys());
        Category.allFields().forEach(field -> known.add(field.option()));
        RiderInputs.all().forEach(input -> known.add(input.key()));
        known.addAll(Set.copyOf(known).stream()
                .map(key -> key.substring(key.lastIndexOf('.') + 1))
                .toList());
        return known;
    }

    private static Stream<Path> written() throws IOException {
        try (Stream<Path> pages = Files.list(Path.of("worksheets"))) {
            return Stream.concat(
                    Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")), pages.sorted().toList().stream());
        }
    }

    @ParameterizedTest
    @MethodSource("written")
    void aPageNamesOnlyKeysThatThereAre(Path file) throws IOException {
        String text =
                OF_A_ROW.matcher(Files.readString(file, StandardCharsets.UTF_8)).replaceAll("{{");
        Set<String> own = new HashSet<>(Pattern.compile("\\b(?:double|int|var) (\\w+)")
                .matcher(text)
                .results()
                .map(found -> found.group(1))
                .toList());
        assertThat(KEY.matcher(text)
                        .results()
                        .map(found -> found.group())
                        .filter(word -> !own.contains(word.substring(word.lastIndexOf('.') + 1))))
                .isSubsetOf(KNOWN);
    }

    @Test
    void helpExplainsEveryKeyWithUnitAndDefinition() {
        Vocabulary vocabulary = Vocabulary.standard();
        Glossary glossary = Glossary.of(vocabulary.quantities(), vocabulary.constants());
        assertThat(glossary.keys()).containsExactlyElementsOf(vocabulary.keys());
        assertThat(vocabulary.quantities())
                .allSatisfy(quantity -> assertThat(glossary.entry(quantity))
                        .hasSizeGreaterThan(1)
                        .startsWith(List.of(quantity.key() + ": " + quantity.heading(), quantity.definition())
                                .toArray(String[]::new)));
    }
}
