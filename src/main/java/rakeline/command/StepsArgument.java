package rakeline.command;

import java.util.Arrays;
import java.util.List;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;
import rakeline.study.Steps;

/** An argument of the form {@code FROM:TO} or {@code FROM:TO:STEP}. */
final class StepsArgument {
    private StepsArgument() {}

    /**
     * The steps, both ends included.
     *
     * @param option as it is named in a refusal
     * @param accepted the form of the whole argument
     */
    static Numbers of(String option, String range, String accepted) {
        List<Double> parts = Arrays.stream(range.split(":", -1))
                .map(part -> Console.number(part, option + " " + range))
                .toList();
        return switch (parts.size()) {
            case 2 -> Steps.of(parts.get(0), parts.get(1));
            case 3 -> Steps.of(parts.get(0), parts.get(1), parts.get(2));
            default -> throw new Refusal(option + " is " + range + "; accepted is " + accepted + ".");
        };
    }
}
