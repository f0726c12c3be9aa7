package rakeline.command;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rakeline.quantity.Numbers;
import rakeline.study.Steps;

/** Numbers of the form {@code FROM:TO} or {@code FROM:TO:STEP}. */
final class StepsArgument {
    private StepsArgument() {}

    /**
     * The numbers between the colons.
     *
     * @param place as it is named in a refusal
     * @throws rakeline.quantity.Refusal for what is no number
     */
    static List<Double> numbers(String range, String place) {
        return Arrays.stream(range.split(":", -1))
                .map(part -> Console.number(part, place))
                .toList();
    }

    /** The steps, both ends included, 201 without a step; none for fewer numbers or more. */
    static Optional<Numbers> of(List<Double> range) {
        return switch (range.size()) {
            case 2 -> Optional.of(Steps.of(range.get(0), range.get(1)));
            case 3 -> Optional.of(Steps.of(range.get(0), range.get(1), range.get(2)));
            default -> Optional.empty();
        };
    }
}
