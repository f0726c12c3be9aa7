package rakeline.catalogue.chart;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** A unit that a chart may be in. */
enum ChartUnit {
    MILLIMETRE("1", "mm millimetres millimeters"),
    CENTIMETRE("10", "cm centimetres centimeters"),
    INCH("25.4", "in inch inches \" ″ ''"),
    DEGREE("1", "° º deg degs degree degrees");

    private final BigDecimal factor;
    private final String words;

    ChartUnit(String factor, String words) {
        this.factor = new BigDecimal(factor);
        this.words = words;
    }

    /** The unit of a word in small letters. */
    static Optional<ChartUnit> of(String word) {
        return Arrays.stream(values())
                .filter(unit -> unit.words().contains(word))
                .findFirst();
    }

    /** In millimetres, or degrees. */
    double convert(BigDecimal number) {
        return number.multiply(factor).doubleValue();
    }

    boolean isAngle() {
        return this == DEGREE;
    }

    String word() {
        return words().get(0);
    }

    /** All words of all units, as alternatives of a pattern, the longest first. */
    static String pattern() {
        return Arrays.stream(values())
                .flatMap(unit -> unit.words().stream())
                .sorted((one, other) -> other.length() - one.length())
                .map(Pattern::quote)
                .reduce((one, other) -> one + "|" + other)
                .orElseThrow();
    }

    private List<String> words() {
        return List.of(words.split(" ", -1));
    }
}
