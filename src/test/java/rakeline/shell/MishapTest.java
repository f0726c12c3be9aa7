package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MishapTest {
    private static final Throwable THROWN =
            new IllegalStateException("double secret = 58;", new RuntimeException("of the page"));

    @Test
    void detailsNameVersionJavaAndSystem() {
        assertThat(Mishap.details(THROWN))
                .contains(
                        "Rakeline ",
                        "Java " + System.getProperty("java.version"),
                        "System " + System.getProperty("os.name"));
    }

    @Test
    void detailsHaveTheStackOfEachCause() {
        assertThat(Mishap.details(THROWN))
                .contains("java.lang.IllegalStateException", "java.lang.RuntimeException", "MishapTest.java:");
    }

    @Test
    void detailsHoldNoTextOfThePage() {
        assertThat(Mishap.details(THROWN)).doesNotContain("secret", "of the page");
    }
}
