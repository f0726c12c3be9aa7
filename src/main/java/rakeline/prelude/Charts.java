package rakeline.prelude;

import rakeline.figure.ReconcileTable;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.study.Reconcile;
import rakeline.study.Vocabulary;

/** What a row may call about a maker's chart. */
public final class Charts {
    private Charts() {}

    /** Charted numbers of a bike against those that follow from the others. */
    public static Table reconcile(Bike bike) {
        return ReconcileTable.residuals(Reconcile.of(Vocabulary.standard(), bike));
    }

    /** Which one number would have to be what for the chart to agree; most likely first, empty where it agrees. */
    public static Table suspects(Bike bike) {
        return ReconcileTable.suspects(Reconcile.of(Vocabulary.standard(), bike));
    }
}
