package rakeline.study.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.study.Doubt;
import rakeline.study.FirstOrder;

/**
 * What the standard uncertainties of a bike's inputs do to its measures, to first order: by input, the change of each
 * measure that one standard uncertainty makes. An error of the wheel radius is shared by both wheels.
 */
final class Errors {
    private final Map<String, Map<String, Double>> byMeasure;

    private Errors(Map<String, Map<String, Double>> byMeasure) {
        this.byMeasure = byMeasure;
    }

    static Errors of(Ride ride, List<Measure<Ride>> measures) {
        List<Doubt> doubts = Doubt.about(ride.bike(), true);
        FirstOrder carried = new FirstOrder(ride, doubts);
        Map<String, Map<String, Double>> byMeasure = new HashMap<>();
        measures.forEach(measure -> byMeasure.put(measure.key(), parts(doubts, carried.parts(measure))));
        return new Errors(byMeasure);
    }

    /** The standard uncertainty of each measure of a bike as built; NaN where none is known. */
    static Map<String, Double> standardOf(Bike bike, List<Measure<Geometry>> measures) {
        List<Measure<Ride>> lifted = measures.stream()
                .map(measure -> new Measure<Ride>(measure.quantity(), ride -> measure.read(ride.geometry())))
                .toList();
        Errors errors = of(Ride.of(bike), lifted);
        return lifted.stream()
                .collect(Collectors.toMap(
                        Measure::key,
                        measure -> Math.sqrt(errors.of(measure.key()).values().stream()
                                .mapToDouble(change -> change * change)
                                .sum())));
    }

    /** The change of a measure by one standard uncertainty of each input. */
    Map<String, Double> of(String measure) {
        return byMeasure.get(measure);
    }

    /** The standard uncertainty of an input that is given; NaN where none is known. */
    static double standard(Bike bike, Input input) {
        return Doubt.about(bike, false).stream()
                .flatMap(doubt -> doubt.parts().stream())
                .filter(part -> part.input().equals(input))
                .mapToDouble(Doubt.Part::uncertainty)
                .findFirst()
                .orElse(Double.NaN);
    }

    private static Map<String, Double> parts(List<Doubt> doubts, Numbers parts) {
        Map<String, Double> byInput = new HashMap<>();
        for (int i = 0; i < doubts.size(); i++) {
            byInput.put(doubts.get(i).key(), parts.at(i));
        }
        return byInput;
    }
}
