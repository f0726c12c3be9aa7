package rakeline.study.fit;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.study.fit.Comparison.Row;

/** Differences of measures against the first bike, and the standard uncertainty of each. */
final class Differences {
    private static final List<Input> RADII = List.of(Inputs.FRONT_RADIUS, Inputs.REAR_RADIUS);
    private static final List<Input> WHEELS =
            List.of(Inputs.FRONT_BEAD_SEAT, Inputs.FRONT_TYRE, Inputs.REAR_BEAD_SEAT, Inputs.REAR_TYRE);

    private final List<Contender> contenders;
    private final List<Errors> errors;
    private final boolean sharedContact;
    private final boolean sharedFoot;

    private Differences(List<Contender> contenders, List<Errors> errors, boolean sharedContact, boolean sharedFoot) {
        this.contenders = contenders;
        this.errors = errors;
        this.sharedContact = sharedContact;
        this.sharedFoot = sharedFoot;
    }

    static Differences of(
            List<Contender> contenders, List<Measure<Ride>> measures, Optional<String> contact, boolean sharedFoot) {
        List<Errors> errors =
                contenders.stream().map(one -> Errors.of(one.ride(), measures)).toList();
        return new Differences(contenders, errors, contact.isPresent(), sharedFoot);
    }

    List<Row> rows(List<Measure<Ride>> measures) {
        return measures.stream().map(this::row).toList();
    }

    private Row row(Measure<Ride> measure) {
        Numbers values = Numbers.generate(
                contenders.size(), i -> measure.read(contenders.get(i).ride()).orNaN());
        return new Row(
                measure.quantity(),
                values,
                values.map(value -> value - values.at(0)),
                Numbers.generate(contenders.size(), i -> i == 0 ? 0 : uncertainty(measure.key(), i)));
    }

    private double uncertainty(String measure, int bike) {
        Map<String, Double> first = errors.get(0).of(measure);
        Map<String, Double> other = errors.get(bike).of(measure);
        Set<String> sources = new HashSet<>(first.keySet());
        sources.addAll(other.keySet());
        double sum = 0;
        for (String source : sources.stream().sorted().toList()) {
            double a = first.getOrDefault(source, 0.0);
            double b = other.getOrDefault(source, 0.0);
            sum += isShared(source, bike) ? (b - a) * (b - a) : a * a + b * b;
        }
        return Math.sqrt(sum);
    }

    private boolean isShared(String source, int bike) {
        return contenders.get(bike).origin() == contenders.get(0).origin()
                || (sharedContact && source.startsWith("contact."))
                || (sharedFoot && (source.startsWith("shoe.") || source.startsWith("crank.")))
                || (source.startsWith("wheels.") && haveTheSameWheels(bike));
    }

    /** Whether both stand on the same tyres on the same rims, of which neither was measured: one nominal radius. */
    private boolean haveTheSameWheels(int bike) {
        Bike first = contenders.get(0).ride().bike();
        Bike other = contenders.get(bike).ride().bike();
        return RADII.stream()
                        .noneMatch(radius ->
                                first.given().has(radius) || other.given().has(radius))
                && WHEELS.stream().allMatch(input -> first.get(input) == other.get(input));
    }
}
