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
import rakeline.study.Vocabulary;

/**
 * What follows from a bike's numbers.
 *
 * @param measures by key
 * @param residuals of its charted numbers
 * @param sentences which number would have to be what; empty where nothing is charted or rounding explains it all
 */
public record RackReading(Map<String, Reading> measures, List<Residual> residuals, List<String> sentences) {
    /** Nothing known yet. */
    public static final RackReading NONE = new RackReading(Map.of(), List.of(), List.of());

    public RackReading {
        measures = Map.copyOf(measures);
        residuals = List.copyOf(residuals);
        sentences = List.copyOf(sentences);
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
        List<String> sentences = reconciled.agrees() ? List.of() : ReconcileTable.sentences(reconciled);
        return new RackReading(measures, reconciled.residuals(), sentences);
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

    /** How many charted numbers rounding does not explain. */
    long disagreements() {
        return residuals.stream().filter(residual -> !residual.isWithin()).count();
    }
}
