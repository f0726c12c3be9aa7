package rakeline.command;

import picocli.CommandLine.Option;
import rakeline.geometry.Setting;
import rakeline.study.Mode;
import rakeline.study.Varied;

/** In which way the bike follows a number that a command varies. */
final class AsOption {
    @Option(
            names = "--as",
            paramLabel = "WAY",
            description = "refit or redraw, in place of what is usual for the number.")
    private String as;

    /**
     * A number with the way in which the bike follows it.
     *
     * @throws rakeline.quantity.Refusal for another word than refit or redraw
     */
    Varied varied(Setting setting) {
        return as == null ? Varied.of(setting) : new Varied(setting, Mode.of(as));
    }
}
