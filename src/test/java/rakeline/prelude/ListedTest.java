package rakeline.prelude;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.quantity.Refusal;

/** What a picker offers. */
class ListedTest {
    private static String read(String path) {
        if (path.startsWith("broken")) {
            throw new Refusal(path + " is no JSON.");
        }
        return "read from " + path;
    }

    private static List<Listed<String>> listed(String... paths) {
        return Listed.of(List.of(paths), ListedTest::read, String::toUpperCase);
    }

    @Test
    void aBrokenFileHidesNoOther() {
        assertThat(listed("broken.json", "whole.json")).extracting(Listed::name).contains("READ FROM WHOLE.JSON");
    }

    @Test
    void whatIsListedIsCalledByItsNameAndPath() {
        assertThat(listed("whole.json").get(0)).hasToString("READ FROM WHOLE.JSON (whole.json)");
        assertThat(listed("broken.json").get(0)).hasToString("broken.json is no JSON.");
    }

    @Test
    void aBrokenFileIsListedAndSaysSo() {
        assertThat(listed("broken.json").get(0).trouble()).isEqualTo("broken.json is no JSON.");
    }

    @Test
    void whoeverTakesABrokenFileIsToldWhyItCannotBeRead() {
        assertThatThrownBy(() -> listed("broken.json").get(0).item())
                .isInstanceOf(Refusal.class)
                .hasMessage("broken.json is no JSON.");
    }
}
