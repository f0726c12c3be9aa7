package rakeline.command;

import java.util.Optional;
import picocli.CommandLine.Option;
import rakeline.geometry.Setting;
import rakeline.quantity.Refusal;
import rakeline.study.Hold;
import rakeline.study.Vocabulary;

/** What a command holds while something else varies. */
final class HoldOption {
    @Option(names = "--hold", paramLabel = "MEASURE[=VALUE]", description = "Held, at its starting value or this one.")
    private String hold;

    @Option(names = "--by", paramLabel = "KEY", description = "The input that is solved for to hold it.")
    private String by;

    /**
     * Reads it.
     *
     * @throws Refusal where one option stands without the other, or a key is unknown
     */
    Optional<Hold> hold(Vocabulary vocabulary) {
        if (hold == null && by == null) {
            return Optional.empty();
        }
        if (hold == null || by == null) {
            throw new Refusal("--hold and --by belong together: what is held, and the input that is solved for.");
        }
        Wanted wanted = Wanted.of("--hold", hold);
        return Optional.of(new Hold(vocabulary.measure(wanted.key()), wanted.valueOrNaN(), Setting.of(by)));
    }
}
