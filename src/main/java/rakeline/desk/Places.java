package rakeline.desk;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Where Rakeline keeps what is the user's, by platform: the XDG folders on Linux and other systems, {@code %APPDATA%}
 * and {@code %LOCALAPPDATA%} on Windows, Application Support on macOS. {@code -Drakeline.home=DIR} puts all of it in one
 * folder instead. Nothing is created by asking.
 *
 * <p>Source: XDG Base Directory Specification, version 0.8.
 *
 * @param preferences what the user has set
 * @param state what the program remembers: recent files, window, log
 * @param worksheets the user's Rakeline folder, where rows find files unless the preferences name another
 */
public record Places(Path preferences, Path state, Path worksheets) {
    private static final String NAME = "rakeline";

    /** The places on this machine. */
    public static Places here() {
        return of(System::getProperty, System::getenv);
    }

    /** The places that system properties and environment variables, null where not set, lead to. */
    static Places of(UnaryOperator<String> property, UnaryOperator<String> environment) {
        Optional<String> home =
                Optional.ofNullable(property.apply("rakeline.home")).filter(dir -> !dir.isBlank());
        return home.map(dir -> in(Path.of(dir).toAbsolutePath()))
                .orElseGet(
                        () -> byPlatform(property.apply("os.name"), Path.of(property.apply("user.home")), environment));
    }

    /** Everything in one folder. */
    public static Places in(Path folder) {
        return new Places(folder.resolve("preferences"), folder.resolve("state"), folder.resolve("worksheets"));
    }

    private static Places byPlatform(String system, Path home, UnaryOperator<String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return windows(home, environment);
        }
        return name.startsWith("mac") ? mac(home) : others(home, environment);
    }

    private static Places windows(Path home, UnaryOperator<String> environment) {
        Path roaming =
                absolute(environment.apply("APPDATA"), home.resolve("AppData").resolve("Roaming"));
        Path local = absolute(
                environment.apply("LOCALAPPDATA"), home.resolve("AppData").resolve("Local"));
        return new Places(roaming.resolve(NAME), local.resolve(NAME), userFolder(home));
    }

    private static Places mac(Path home) {
        Path support = home.resolve("Library").resolve("Application Support").resolve(NAME);
        return new Places(support, support.resolve("state"), userFolder(home));
    }

    private static Places others(Path home, UnaryOperator<String> environment) {
        Path config = absolute(environment.apply("XDG_CONFIG_HOME"), home.resolve(".config"));
        Path state = absolute(
                environment.apply("XDG_STATE_HOME"), home.resolve(".local").resolve("state"));
        return new Places(config.resolve(NAME), state.resolve(NAME), userFolder(home));
    }

    private static Path userFolder(Path home) {
        return home.resolve("Rakeline");
    }

    /** The specification has relative paths ignored. */
    private static Path absolute(String given, Path otherwise) {
        return Optional.ofNullable(given)
                .filter(path -> !path.isBlank())
                .map(Path::of)
                .filter(Path::isAbsolute)
                .orElse(otherwise);
    }
}
