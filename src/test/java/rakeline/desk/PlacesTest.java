package rakeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlacesTest {
    private static final Path HOME = Path.of("home").toAbsolutePath();
    private static final String ELSEWHERE =
            Path.of("elsewhere").toAbsolutePath().toString();

    @Test
    void preferencesAreInTheConfigFolderOfTheHome() {
        assertThat(places("Linux", Map.of()).preferences())
                .isEqualTo(HOME.resolve(".config").resolve("rakeline"));
    }

    @Test
    void stateIsInTheStateFolderOfTheHome() {
        assertThat(places("Linux", Map.of()).state())
                .isEqualTo(HOME.resolve(".local").resolve("state").resolve("rakeline"));
    }

    @Test
    void preferencesFollowTheVariableOfTheSpecification() {
        assertThat(places("Linux", Map.of("XDG_CONFIG_HOME", ELSEWHERE)).preferences())
                .isEqualTo(Path.of(ELSEWHERE, "rakeline"));
    }

    @Test
    void stateFollowsTheVariableOfTheSpecification() {
        assertThat(places("Linux", Map.of("XDG_STATE_HOME", ELSEWHERE)).state())
                .isEqualTo(Path.of(ELSEWHERE, "rakeline"));
    }

    @Test
    void aRelativePathInAVariableIsIgnored() {
        assertThat(places("Linux", Map.of("XDG_CONFIG_HOME", "here")).preferences())
                .isEqualTo(HOME.resolve(".config").resolve("rakeline"));
    }

    @Test
    void preferencesRoamOnWindows() {
        assertThat(places("Windows 11", Map.of("APPDATA", ELSEWHERE)).preferences())
                .isEqualTo(Path.of(ELSEWHERE, "rakeline"));
    }

    @Test
    void stateStaysOnTheMachineOnWindows() {
        assertThat(places("Windows 11", Map.of("APPDATA", ELSEWHERE)).state())
                .isEqualTo(HOME.resolve("AppData").resolve("Local").resolve("rakeline"));
    }

    @Test
    void aMacHasThemInApplicationSupport() {
        assertThat(places("Mac OS X", Map.of()).preferences())
                .isEqualTo(
                        HOME.resolve("Library").resolve("Application Support").resolve("rakeline"));
    }

    @Test
    void onePropertyPutsEverythingInOneFolder() {
        Places places = Places.of(
                Map.of("rakeline.home", ELSEWHERE, "os.name", "Linux", "user.home", HOME.toString())::get,
                name -> null);
        assertThat(places).isEqualTo(Places.in(Path.of(ELSEWHERE)));
    }

    @Test
    void testsHaveAFolderOfTheirOwn() {
        assertThat(Places.here().state().getParent().toString()).isEqualTo(System.getProperty("rakeline.home"));
    }

    private static Places places(String system, Map<String, String> environment) {
        return Places.of(Map.of("os.name", system, "user.home", HOME.toString())::get, environment::get);
    }
}
