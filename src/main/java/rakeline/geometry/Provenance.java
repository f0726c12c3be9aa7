package rakeline.geometry;

import java.util.Locale;
import java.util.Optional;

/**
 * Where a number came from.
 *
 * @param standardUncertainty in the number's unit; NaN for the declaration's own
 * @param step to which the number is printed, in its unit; NaN for the chart's own, {@code charted.stepMm} or
 *     {@code charted.stepDeg}
 */
public record Provenance(Optional<Origin> from, double standardUncertainty, double step) {
    /** Nothing is known of where a number came from. */
    public static final Provenance NOTHING = new Provenance(Optional.empty(), Double.NaN);

    /** A number printed to its chart's own step. */
    public Provenance(Optional<Origin> from, double standardUncertainty) {
        this(from, standardUncertainty, Double.NaN);
    }

    public static Provenance of(Origin from) {
        return NOTHING.from(from);
    }

    public Provenance from(Origin origin) {
        return new Provenance(Optional.of(origin), standardUncertainty, step);
    }

    public Provenance withUncertainty(double standard) {
        return new Provenance(from, standard, step);
    }

    public Provenance withStep(double printed) {
        return new Provenance(from, standardUncertainty, printed);
    }

    public boolean saysNothing() {
        return equals(NOTHING);
    }

    /** How a number was come by; a file writes it in lower case. */
    public enum Origin {
        CHARTED,
        MEASURED,
        ASSUMED,
        SOLVED;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
