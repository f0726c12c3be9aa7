package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MishapTest {
    private final Throwable thrown =
            new IllegalStateException("double secret = 58;", new RuntimeException("of the page"));

    @Test
    void detailsNameVersionJavaAndSystem() {
        assertThat(Mishap.details(thrown))
                .contains(
                        "Rakeline ",
                        "Java " + System.getProperty("java.version"),
                        "System " + System.getProperty("os.name"));
    }

    @Test
    void detailsHaveTheStackOfEachCause() {
        assertThat(Mishap.details(thrown))
                .contains("java.lang.IllegalStateException", "java.lang.RuntimeException", "MishapTest.java:");
    }

    @Test
    void detailsHoldNoTextOfThePage() {
        assertThat(Mishap.details(thrown)).doesNotContain("secret", "of the page");
    }
}
