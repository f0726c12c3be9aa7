package rakeline.study;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Range;
import rakeline.quantity.Reading;
import rakeline.quantity.Unit;

/** Charted numbers against derived ones. */
public final class Reconcile {
    private static final String CHARTED = "charted.";
    private static final double STEP = 1e-3;

    private final Vocabulary vocabulary;
    private final Bike bike;

    private Reconcile(Vocabulary vocabulary, Bike bike) {
        this.vocabulary = vocabulary;
        this.bike = bike;
    }

    /** One residual for each charted number that can be derived. */
    public static List<Residual> residuals(Vocabulary vocabulary, Bike bike) {
        return new Reconcile(vocabulary, bike).residuals();
    }

    private List<Residual> residuals() {
        return Inputs.all().stream()
                .filter(input -> input.key().startsWith(CHARTED) && bike.given().has(input))
                .flatMap(input -> residual(input).stream())
                .toList();
    }

    private Optional<Residual> residual(Input charted) {
        Measure<Ride> measure = vocabulary.measures().get(charted.name());
        if (measure == null || !(measure.read(Ride.of(bike)) instanceof Reading.Known derived)) {
            return Optional.empty();
        }
        return Optional.of(new Residual(
                charted.quantity(),
                bike.get(charted),
                derived.value(),
                tolerance(measure, charted.quantity().unit())));
    }

    private double tolerance(Measure<Ride> measure, Unit unit) {
        double spread = Inputs.all().stream()
                .filter(this::isPrinted)
                .mapToDouble(input -> Math.abs(slope(measure, input))
                        * printedStep(input.quantity().unit())
                        / 2)
                .sum();
        return printedStep(unit) / 2 + spread;
    }

    private boolean isPrinted(Input input) {
        boolean chart = List.of("frame.", "fork.", "wheels.").stream().anyMatch(input.key()::startsWith);
        return chart && bike.given().has(input);
    }

    private double printedStep(Unit unit) {
        Input step = unit == Unit.DEGREE ? Inputs.CHARTED_STEP_DEG : Inputs.CHARTED_STEP_MM;
        return bike.get(step);
    }

    private double slope(Measure<Ride> measure, Input input) {
        Range range = input.quantity().accepted();
        double low = Math.max(range.from(), bike.get(input) - STEP);
        double high = Math.min(range.to(), bike.get(input) + STEP);
        return (at(measure, input, high) - at(measure, input, low)) / (high - low);
    }

    private double at(Measure<Ride> measure, Input input, double value) {
        return measure.read(Ride.of(bike.redraw(Map.of(input, value)))).orNaN();
    }
}
