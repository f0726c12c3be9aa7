package rakeline.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.prelude.RowWords;

class ManualTest {
    private static Manual written;

    @BeforeAll
    static void read() throws IOException {
        written = ManualWriter.read(Path.of("src", "main", "java"));
    }

    @Test
    void aWordOfTheRowsIsDocumentedAsItsDeclarationIs() {
        assertThat(written.method("Prelude", "sweep", List.of("BikeOrRide")))
                .get()
                .asString()
                .isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Sweeping rakeline.prelude.Sweeping.track(String... measures)",
                "Sweeping Sweeping.track(String... measures)"
            })
    void aSignatureFindsItsEntryWithPackagesAndWithout(String signature) {
        assertThat(written.signature(signature)).isPresent();
    }

    @Test
    void typeArgumentsAndAnnotationsDoNotCount() {
        Manual manual = new Manual(Map.of("Book.find(Map,String)", "finds"));
        assertThat(manual.signature(
                        "List<Map<String,Double>> a.b.Book.find(@Deprecated Map<String,Double> m, java.lang.String s)"))
                .contains("finds");
    }

    /** What it does in a sentence, and of each number its unit or where it lies. */
    @Test
    void everyWordOfTheRowsIsExplainedWithItsNumbers() {
        assertThat(RowWords.all()).hasSizeGreaterThan(100).allSatisfy(method -> {
            String entry = written.method(method.getDeclaringClass().getSimpleName(), method.getName(), types(method))
                    .orElse("");
            assertThat(entry).as("%s", method).hasSizeGreaterThan(30);
            assertThat(numbers(method)).as("%s", method).allMatch(number -> entry.contains(number + ": "));
        });
    }

    private static List<String> types(Method method) {
        return Arrays.stream(method.getParameters())
                .map(each -> each.isVarArgs()
                        ? each.getType().getComponentType().getSimpleName() + "..."
                        : each.getType().getSimpleName())
                .toList();
    }

    private static List<String> numbers(Method method) {
        return Arrays.stream(method.getParameters())
                .filter(each -> List.of("double", "int", "double[]")
                        .contains(each.getType().getSimpleName()))
                .map(Parameter::getName)
                .toList();
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        assertThat(Manual.read(written.write())).isEqualTo(written);
    }

    @Test
    void anUnknownSignatureHasNoEntry() {
        assertThat(written.signature("int Nothing.nothing()")).isEmpty();
    }
}
