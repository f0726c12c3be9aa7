package rakeline.prelude;

import java.util.List;

/** What a row may call by its bare name. */
public final class Prelude {
    /** The imports in force in every row. */
    public static final List<String> IMPORTS = List.of(
            "import java.util.*;",
            "import java.util.function.*;",
            "import java.util.stream.*;",
            "import static java.lang.Math.*;",
            "import rakeline.quantity.*;",
            "import rakeline.figure.*;",
            "import static rakeline.prelude.Prelude.*;");

    private Prelude() {}

    /** A dial: a number that a person moves, starting at {@code initial}; only as the whole initialiser of a variable. */
    public static double dial(String label, String unit, double min, double max, double step, double initial) {
        return Surroundings.current()
                .dial(new DialRequest(label, "", unit, min, max, step, initial, Double.NaN, decimalsOf(step)));
    }

    private static int decimalsOf(double step) {
        return Math.max(
                0, java.math.BigDecimal.valueOf(step).stripTrailingZeros().scale());
    }
}
