package rakeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class RecentsTest {
    private static final Path A = path("a");
    private static final Path B = path("b");

    @Test
    void theLatestIsFirst() {
        assertThat(Recents.none().opened(A).opened(B).files()).containsExactly(B, A);
    }

    @Test
    void aFileOpenedAgainMovesToTheFront() {
        assertThat(Recents.none().opened(A).opened(B).opened(A).files()).containsExactly(A, B);
    }

    @Test
    void oneFileByTwoPathsIsOne() {
        Path roundabout = A.resolveSibling("x").resolve("..").resolve("a");
        assertThat(Recents.none().opened(A).opened(roundabout).files()).containsExactly(A);
    }

    @Test
    void theOldestOfThirteenIsForgotten() {
        Recents recents = Recents.none().opened(A);
        for (int i = 0; i < Recents.MOST; i++) {
            recents = recents.opened(path("file " + i));
        }
        assertThat(recents.files()).hasSize(12).doesNotContain(A);
    }

    @Test
    void aFileThatMovedIsSaid() {
        assertThat(Recents.none().opened(A).opened(B).gone(B::equals)).containsExactly(A);
    }

    @Test
    void aFileIsTakenOff() {
        assertThat(Recents.none().opened(A).opened(B).without(B).files()).containsExactly(A);
    }

    private static Path path(String name) {
        return Path.of(name).toAbsolutePath();
    }
}
