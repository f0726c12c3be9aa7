package rakeline.study;

import java.util.Locale;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.quantity.Sentences;
import rakeline.quantity.Unit;

/** A measure as its change against a present bike, in per cent of the present value's size. */
public final class Relative {
    private Relative() {}

    /**
     * The change, as a measure like any other; its key ends in {@code ChangePercent}.
     *
     * @throws Refusal where the present bike has no value, or 0, to compare with
     */
    public static Measure<Ride> to(Ride present, Measure<Ride> measure) {
        Reading now = measure.read(present);
        if (!(now instanceof Reading.Known known) || known.value() == 0) {
            throw new Refusal(Sentences.upper(measure.quantity().withKey()) + " of "
                    + present.bike().name() + " " + (now.reason().isEmpty() ? "is 0" : now.reason())
                    + "; nothing can be given in per cent of it.");
        }
        return new Measure<>(
                change(measure.quantity(), present.bike().name()), ride -> percent(measure.read(ride), known.value()));
    }

    private static Quantity change(Quantity of, String present) {
        return Quantity.of(
                        of.key() + "ChangePercent",
                        of.label() + ", change",
                        Unit.PERCENT,
                        "Change of " + of.label().toLowerCase(Locale.ROOT) + " against " + present
                                + ", in per cent of its value there.")
                .decimals(1)
                .cautions(of.cautions())
                .declared();
    }

    private static Reading percent(Reading reading, double now) {
        return reading instanceof Reading.Known known
                ? Reading.of(100 * (known.value() - now) / Math.abs(now))
                : reading;
    }
}
