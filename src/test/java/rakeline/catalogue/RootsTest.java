package rakeline.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.quantity.Refusal;

/** Where a row's files are found. */
class RootsTest {
    private static final long LIMIT = 1_000_000;

    @TempDir
    Path place;

    private Path page;
    private Path own;
    private Roots roots;

    @BeforeEach
    void folders() throws IOException {
        page = Files.createDirectory(place.resolve("page"));
        own = Files.createDirectory(place.resolve("own"));
        roots = new Roots(List.of(page, own));
    }

    @Test
    void theWorksheetsFolderComesFirst() throws IOException {
        put(page, "a.txt", "page");
        put(own, "a.txt", "own");
        assertThat(read("a.txt")).isEqualTo("page");
    }

    @Test
    void theUsersFolderComesSecond() throws IOException {
        put(own, "a.txt", "own");
        assertThat(read("a.txt")).isEqualTo("own");
    }

    @Test
    void whatIsBundledComesLast() {
        assertThat(read("demo-data/bikes/road-xs.bike.json")).contains("Road XS");
    }

    @Test
    void onesOwnRidersAreListedBeforeTheBundledOnes() throws IOException {
        put(own, "mine.rider.json", "{}");
        put(own, "mine.parts.json", "{}");
        assertThat(roots.paths(Bundled.RIDERS))
                .startsWith("mine.rider.json")
                .containsAll(Bundled.RIDERS.paths())
                .doesNotContain("mine.parts.json");
    }

    @Test
    void whoeverFollowsTheReadingIsToldOfAFolderThatIsListed() {
        List<Path> told = new java.util.ArrayList<>();
        new Roots(List.of(page, own), Roots.Links.REFUSED, told::add).paths(Bundled.PARTS);
        assertThat(told).containsExactly(page, own);
    }

    @Test
    void aFolderThatIsNotThereIsPassedOver() {
        Roots missing = new Roots(List.of(place.resolve("gone")));
        assertThat(missing.read("demo-data/bikes/road-xs.bike.json", LIMIT)).isNotEmpty();
    }

    @Test
    void aFileInASubfolderIsFound() throws IOException {
        put(Files.createDirectory(page.resolve("bikes")), "a.txt", "inner");
        assertThat(read("bikes/a.txt")).isEqualTo("inner");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../secret.txt", "bikes/../../secret.txt", "./../secret.txt"})
    void aPathThatClimbsOutIsRefused(String name) throws IOException {
        put(place, "secret.txt", "secret");
        assertThatThrownBy(() -> read(name)).isInstanceOf(Refusal.class).hasMessageContaining(name);
    }

    @Test
    void anAbsolutePathIsRefused() throws IOException {
        String name = put(page, "a.txt", "page").toAbsolutePath().toString();
        assertThatThrownBy(() -> read(name)).isInstanceOf(Refusal.class).hasMessageContaining(name);
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aLinkThatLeavesItsPlaceIsRefused() throws IOException {
        Files.createSymbolicLink(page.resolve("link.txt"), put(place, "secret.txt", "secret"));
        assertThatThrownBy(() -> read("link.txt")).isInstanceOf(Refusal.class).hasMessageContaining("link.txt");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aLinkThatLeavesItsPlaceIsFollowedWhereThatIsAllowed() throws IOException {
        Files.createSymbolicLink(page.resolve("link.txt"), put(place, "secret.txt", "secret"));
        Roots allowing = new Roots(List.of(page), Roots.Links.FOLLOWED, file -> {});
        assertThat(allowing.read("link.txt", LIMIT))
                .asString(StandardCharsets.UTF_8)
                .isEqualTo("secret");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aLinkThatStaysIsFollowed() throws IOException {
        Files.createSymbolicLink(page.resolve("link.txt"), put(page, "a.txt", "page"));
        assertThat(read("link.txt")).isEqualTo("page");
    }

    @ParameterizedTest
    @ValueSource(strings = {"missing.bike.json", "demo-data/bikes/missing.bike.json", ""})
    void whatIsNowhereIsRefused(String name) {
        assertThatThrownBy(() -> read(name)).isInstanceOf(Refusal.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo-data", "demo-data/bikes", "demo-data/bikes/", ""})
    void aFolderOfTheProgramIsRefused(String name) {
        assertThatThrownBy(() -> Roots.bundled().read(name, LIMIT)).isInstanceOf(Refusal.class);
    }

    @Test
    void theWorkingDirectoryIsNotSearched() {
        assertThat(Files.exists(Path.of("pom.xml"))).isTrue();
        assertThatThrownBy(() -> read("pom.xml")).isInstanceOf(Refusal.class).hasMessageContaining("pom.xml");
    }

    @Test
    void aFileThatIsTooLargeIsRefused() throws IOException {
        put(page, "a.txt", "more than four bytes");
        assertThatThrownBy(() -> roots.read("a.txt", 4)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> roots.read("demo-data/bikes/road-xs.bike.json", 4))
                .isInstanceOf(Refusal.class);
    }

    private String read(String name) {
        return new String(roots.read(name, LIMIT), StandardCharsets.UTF_8);
    }

    private static Path put(Path folder, String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
