package rakeline.study;

import java.util.List;
import rakeline.geometry.Bike;

/**
 * Charted numbers against derived ones, and which single number would have to be what for the chart to agree.
 *
 * @param residuals one for each charted number that can be derived
 * @param suspects most likely first, those of one group together; empty where every residual is within its tolerance,
 *     or where no single change brings all of them there
 */
public record Reconcile(Bike bike, List<Residual> residuals, List<Suspect> suspects) {
    public Reconcile {
        residuals = List.copyOf(residuals);
        suspects = List.copyOf(suspects);
    }

    /** Solves it on all cores. */
    public static Reconcile of(Vocabulary vocabulary, Bike bike) {
        return of(vocabulary, bike, Crew.onAllCores(), Progress.UNWATCHED);
    }

    /**
     * Solves it.
     *
     * @return the same with any crew
     * @throws java.util.concurrent.CancellationException where the progress does not go on
     */
    public static Reconcile of(Vocabulary vocabulary, Bike bike, Crew crew, Progress progress) {
        ChartedBike chart = ChartedBike.of(vocabulary, bike);
        return new Reconcile(bike, chart.residuals(), Suspects.of(chart, crew, progress));
    }

    /** The residuals alone. */
    public static List<Residual> residuals(Vocabulary vocabulary, Bike bike) {
        return ChartedBike.of(vocabulary, bike).residuals();
    }

    /** Whether rounding explains every difference. */
    public boolean agrees() {
        return residuals.stream().allMatch(Residual::isWithin);
    }
}
