package rakeline.study.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Range;

/**
 * What the standard uncertainties of a bike's inputs do to its measures, to first order: by input, the change of each
 * measure that one standard uncertainty makes. An error of the wheel radius is shared by both wheels.
 */
final class Errors {
    /** Central differences over this part of the uncertainty. */
    private static final double STEP = 0.1;

    private static final String RADIUS = "wheels.both.radiusMm";

    private static final List<Input> RADII = List.of(Inputs.FRONT_RADIUS, Inputs.REAR_RADIUS);

    private record Source(String key, List<Input> inputs, double standard) {}

    private final Map<String, Map<String, Double>> byMeasure;

    private Errors(Map<String, Map<String, Double>> byMeasure) {
        this.byMeasure = byMeasure;
    }

    static Errors of(Ride ride, List<Measure<Ride>> measures) {
        Map<String, Map<String, Double>> byMeasure = new HashMap<>();
        measures.forEach(measure -> byMeasure.put(measure.key(), new HashMap<>()));
        for (Source source : sources(ride.bike())) {
            Ride low = shifted(ride, source, -STEP);
            Ride high = shifted(ride, source, STEP);
            measures.forEach(measure -> byMeasure
                    .get(measure.key())
                    .put(
                            source.key(),
                            (measure.read(high).orNaN() - measure.read(low).orNaN()) / (2 * STEP)));
        }
        return new Errors(byMeasure);
    }

    /** The standard uncertainty of each measure of a bike as built. */
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

    private static List<Source> sources(Bike bike) {
        List<Source> sources = new ArrayList<>();
        Inputs.all().stream()
                .filter(input -> bike.has(input) && !input.key().startsWith("charted."))
                .filter(input -> !RADII.contains(input))
                .map(input -> new Source(input.key(), List.of(input), standard(bike, input)))
                .forEach(sources::add);
        double radius = Math.max(standard(bike, Inputs.FRONT_RADIUS), standard(bike, Inputs.REAR_RADIUS));
        sources.add(new Source(RADIUS, RADII, radius));
        return sources.stream().filter(source -> source.standard() > 0).toList();
    }

    /** Its own uncertainty, or the usual one; NaN where none is known. */
    static double standard(Bike bike, Input input) {
        return Stream.ofNullable(bike.provenance().get(input.key()))
                .map(Provenance::standardUncertainty)
                .filter(own -> !Double.isNaN(own))
                .findFirst()
                .orElse(input.quantity().uncertaintyOrNaN());
    }

    private static Ride shifted(Ride ride, Source source, double steps) {
        Map<Input, Double> changes = new HashMap<>();
        source.inputs().forEach(input -> {
            Range accepted = input.quantity().accepted();
            double value = ride.bike().get(input) + steps * source.standard();
            changes.put(input, Math.min(accepted.to(), Math.max(accepted.from(), value)));
        });
        return ride.on(ride.bike().redraw(changes));
    }
}
