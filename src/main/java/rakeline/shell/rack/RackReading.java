package rakeline.shell.rack;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.figure.ReconcileTable;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.study.Reconcile;
import rakeline.study.Residual;
import rakeline.study.Suspect;
import rakeline.study.Vocabulary;

/**
 * What follows from a bike's numbers.
 *
 * @param measures by key
 * @param residuals of its charted numbers
 * @param suspects which number would have to be what; empty where nothing is charted or rounding explains it all
 */
public record RackReading(Map<String, Reading> measures, List<Residual> residuals, List<Suspect> suspects) {
    /** Nothing known yet. */
    public static final RackReading NONE = new RackReading(Map.of(), List.of(), List.of());

    public RackReading {
        measures = Map.copyOf(measures);
        residuals = List.copyOf(residuals);
        suspects = List.copyOf(suspects);
    }

    /**
     * Computes; may take some time, so not on the event thread.
     *
     * @param keys of the measures that are looked at
     */
    static RackReading of(Vocabulary vocabulary, Bike bike, RackSeat seat, Collection<String> keys) {
        Map<String, Reading> measures = new LinkedHashMap<>();
        try {
            Ride ride = seat.on(bike);
            keys.forEach(key -> measures.put(key, vocabulary.tracked(key).read(ride)));
        } catch (Refusal refusal) {
            keys.forEach(key -> measures.put(key, Reading.nowhere(refusal.getMessage())));
        }
        Reconcile reconciled = Reconcile.of(vocabulary, bike);
        List<Suspect> suspects = reconciled.agrees() ? List.of() : reconciled.suspects();
        return new RackReading(measures, reconciled.residuals(), suspects);
    }

    /** The residual of a charted number that rounding does not explain. */
    Optional<Residual> disagreement(RackColumn column) {
        return residuals.stream()
                .filter(residual -> residual.quantity().key().equals(column.key()) && !residual.isWithin())
                .findFirst();
    }

    Optional<Residual> residual(RackColumn column) {
        return residuals.stream()
                .filter(residual -> residual.quantity().key().equals(column.key()))
                .findFirst();
    }

    /** Which number would have to be what, in sentences; none where rounding explains it all. */
    List<String> sentences(LengthUnit lengths) {
        return disagreements() == 0
                ? List.of()
                : ReconcileTable.sentences(suspects, new Labels.Told(lengths)).stream()
                        .map(Labels::sentence)
                        .toList();
    }

    /** How many charted numbers rounding does not explain. */
    long disagreements() {
        return residuals.stream().filter(residual -> !residual.isWithin()).count();
    }
}
