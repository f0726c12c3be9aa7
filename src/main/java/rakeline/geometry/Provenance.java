package rakeline.geometry;

import java.util.Locale;
import java.util.Optional;

/**
 * Where a number came from.
 *
 * @param standardUncertainty in the number's unit; NaN for the declaration's own
 */
public record Provenance(Optional<Origin> from, double standardUncertainty) {
    public static Provenance of(Origin from) {
        return new Provenance(Optional.of(from), Double.NaN);
    }

    public boolean saysNothing() {
        return from.isEmpty() && Double.isNaN(standardUncertainty);
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
