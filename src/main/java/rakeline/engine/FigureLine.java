package rakeline.engine;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import rakeline.figure.Column;
import rakeline.figure.Figure;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;

/** Which line of a figure's numbers is meant. */
final class FigureLine {
    private static final double SAME = 1e-9;

    private FigureLine() {}

    /**
     * The line's place, from 0.
     *
     * @param said first, last, least, most, {@code #3}, or what the line's first cell says; empty for the only one
     * @throws Refusal where there is no such line, as the end of a sentence
     */
    static int of(Figure figure, Column column, Optional<String> said) {
        String words = said.orElse("");
        return switch (words) {
            case "" -> only(column);
            case "first" -> 0;
            case "last" -> column.size() - 1;
            case "least" -> extreme(column, Comparator.reverseOrder());
            case "most" -> extreme(column, Comparator.naturalOrder());
            default ->
                words.matches("#\\d{1,6}")
                        ? numbered(column, Integer.parseInt(words.substring(1)))
                        : saying(figure.columns().get(0), words);
        };
    }

    private static int only(Column column) {
        if (column.size() != 1) {
            throw new Refusal(
                    "asks for one of " + column.size() + " lines; say which, as " + column.key() + "[first].");
        }
        return 0;
    }

    private static int numbered(Column column, int number) {
        if (number < 1 || number > column.size()) {
            throw new Refusal("asks for line " + number + " of " + column.size() + ".");
        }
        return number - 1;
    }

    private static int extreme(Column column, Comparator<Double> order) {
        return IntStream.range(0, column.values().size())
                .filter(line -> !Double.isNaN(column.values().at(line)))
                .boxed()
                .max(Comparator.comparing(line -> column.values().at(line), order))
                .orElseThrow(() -> new Refusal("asks for a number among none."));
    }

    private static int saying(Column first, String words) {
        OptionalDouble number = number(words);
        IntPredicate matches = first.isNumeric() && number.isPresent()
                ? line -> isSame(first.values().at(line), number.getAsDouble())
                : line -> Decimals.typed(first.shown().get(line)).equals(Decimals.typed(words));
        return IntStream.range(0, first.size())
                .filter(matches)
                .findFirst()
                .orElseThrow(() -> new Refusal("asks for the line " + words + ", which is not there."));
    }

    private static boolean isSame(double one, double other) {
        return Math.abs(one - other) <= SAME * Math.max(1, Math.abs(other));
    }

    private static OptionalDouble number(String words) {
        String typed = Decimals.typed(words);
        return typed.matches("-?\\d+(\\.\\d+)?")
                ? OptionalDouble.of(Double.parseDouble(typed))
                : OptionalDouble.empty();
    }
}
