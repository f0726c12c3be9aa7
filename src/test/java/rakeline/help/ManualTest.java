package rakeline.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    @Test
    void whatIsWrittenIsReadAgain() {
        assertThat(Manual.read(written.write())).isEqualTo(written);
    }

    @Test
    void anUnknownSignatureHasNoEntry() {
        assertThat(written.signature("int Nothing.nothing()")).isEmpty();
    }
}
