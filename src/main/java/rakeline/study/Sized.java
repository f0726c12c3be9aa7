package rakeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;
import rakeline.quantity.Caution;
import rakeline.quantity.Quantity;

/**
 * What a size run found.
 *
 * @param sizes in the order asked
 */
public record Sized(SizeRun run, List<Size> sizes) {
    /**
     * One size.
     *
     * @param asDrawn as it was given
     * @param bike as the floor needs it; empty where no head angle reaches it
     * @param kept whether it clears the floor at its own head angle
     * @param reason why there is no bike, else empty
     */
    public record Size(Ride asDrawn, Optional<Bike> bike, boolean kept, String reason) {
        /** The same rider on the bike that the floor needs. */
        public Optional<Ride> needed() {
            return bike.map(asDrawn::on);
        }
    }

    public Sized {
        sizes = List.copyOf(sizes);
    }

    /** The bikes that the floor needs, sizes without one left out. */
    public List<Bike> bikes() {
        return sizes.stream().flatMap(size -> size.bike().stream()).toList();
    }

    /** As in {@code Head angle and offset for a front-centre of at least 575 mm}. */
    public String title() {
        Quantity quantity = run.floor().measure().quantity();
        return "Head angle and offset for a " + Wording.lower(quantity.label()) + " of at least "
                + quantity.said(run.floor().value());
    }

    /** What stayed as it was, in words. */
    public String held() {
        String rest = "; every other input, as drawn. A size that clears the floor keeps its head angle.";
        if (run.holding() instanceof SizeRun.Holding.ByOffset by) {
            Quantity quantity = by.measure().quantity();
            return Wording.lower(quantity.label()) + at(quantity, by.value()) + " by solving for fork offset" + rest;
        }
        double offset = ((SizeRun.Holding.Offset) run.holding()).offsetMm();
        return "fork offset" + at(Inputs.FORK_OFFSET.quantity(), offset) + rest;
    }

    /** The cautions that belong to what was changed and tracked, each once. */
    public List<Caution> cautions() {
        List<Quantity> shown =
                new ArrayList<>(List.of(run.floor().measure().quantity(), Inputs.FORK_OFFSET.quantity()));
        run.tracks().forEach(track -> shown.add(track.quantity()));
        return Quantity.cautionsOf(shown);
    }

    private static String at(Quantity quantity, double value) {
        return Double.isNaN(value) ? ", each size's own," : " at " + quantity.said(value);
    }
}
