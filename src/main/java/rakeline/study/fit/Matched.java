package rakeline.study.fit;

import java.util.List;
import rakeline.quantity.Refusal;

/**
 * What a match found.
 *
 * @param combinations how many there are in all
 * @param options the best of them, best first
 */
public record Matched(Match match, double combinations, List<Option> options) {
    public Matched {
        options = List.copyOf(options);
    }

    /** The best. */
    public Option first() {
        return options.stream().findFirst().orElseThrow(() -> new Refusal("a match keeps at least one option."));
    }
}
