package rakeline.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Lazy;
import rakeline.quantity.Measure;
import rakeline.quantity.Unit;

/** The charted numbers of a bike, what follows from its other numbers, and what rounding can do to the difference. */
final class ChartedBike {
    /** The group of the numbers that only ever check. */
    static final String CHARTED = "charted.";

    private static final List<String> PRINTED = List.of("frame.", "fork.", "wheels.");

    /** Sizes by name, which no maker rounds. */
    private static final Set<Input> NOMINAL =
            Set.of(Inputs.FRONT_BEAD_SEAT, Inputs.FRONT_TYRE, Inputs.REAR_BEAD_SEAT, Inputs.REAR_TYRE);

    /** A charted number and the measure that it should equal. */
    record Check(Input charted, Measure<Ride> measure) {}

    private final Bike bike;
    private final List<Check> checks;
    private final List<Input> rounded;
    private final Lazy<double[][]> slopes = Lazy.of(this::slopes);

    private ChartedBike(Bike bike, List<Check> checks, List<Input> rounded) {
        this.bike = bike;
        this.checks = checks;
        this.rounded = rounded;
    }

    static ChartedBike of(Vocabulary vocabulary, Bike bike) {
        Ride ride = Ride.of(bike);
        List<Check> checks = Inputs.all().stream()
                .filter(input -> input.key().startsWith(CHARTED) && bike.given().has(input))
                .filter(input -> vocabulary.measures().containsKey(input.name()))
                .map(input -> new Check(input, vocabulary.measure(input.name())))
                .filter(check -> !Double.isNaN(check.measure().read(ride).orNaN()))
                .toList();
        return new ChartedBike(
                bike,
                checks,
                Inputs.all().stream().filter(input -> isRounded(input, bike)).toList());
    }

    /** The same checks of another bike. */
    ChartedBike on(Bike other) {
        return new ChartedBike(other, checks, rounded);
    }

    Bike bike() {
        return bike;
    }

    List<Check> checks() {
        return checks;
    }

    /** The numbers whose rounding tells on a charted one. */
    List<Input> rounded() {
        return rounded;
    }

    /** The step to which a number is printed. */
    double step(Input input) {
        double own =
                bike.provenance().getOrDefault(input.key(), Provenance.NOTHING).step();
        Input whole = input.quantity().unit() == Unit.DEGREE ? Inputs.CHARTED_STEP_DEG : Inputs.CHARTED_STEP_MM;
        return Double.isNaN(own) ? bike.get(whole) : own;
    }

    /** How much a check's derived number moves by a unit of each rounded input. */
    double[] slopes(int check) {
        return slopes.get()[check];
    }

    /** Charted minus derived, check by check; NaN where nothing follows. */
    double[] differences() {
        return differences(bike);
    }

    double[] differences(Bike of) {
        Ride ride = Ride.of(of);
        return checks.stream()
                .mapToDouble(check ->
                        of.get(check.charted()) - check.measure().read(ride).orNaN())
                .toArray();
    }

    List<Residual> residuals() {
        double[] differences = differences();
        return IntStream.range(0, checks.size())
                .mapToObj(i -> residual(i, differences[i]))
                .toList();
    }

    private Residual residual(int i, double difference) {
        Input charted = checks.get(i).charted();
        double value = bike.get(charted);
        return new Residual(charted.quantity(), value, value - difference, tolerance(i));
    }

    private double tolerance(int check) {
        double spread = IntStream.range(0, rounded.size())
                .mapToDouble(j -> Math.abs(slopes(check)[j]) * step(rounded.get(j)) / 2)
                .sum();
        return step(checks.get(check).charted()) / 2 + spread;
    }

    private static boolean isRounded(Input input, Bike bike) {
        return PRINTED.stream().anyMatch(input.key()::startsWith)
                && bike.given().has(input)
                && !NOMINAL.contains(input);
    }

    private double[][] slopes() {
        double[][] slopes = new double[checks.size()][rounded.size()];
        for (int j = 0; j < rounded.size(); j++) {
            double[] falls = falls(rounded.get(j));
            for (int i = 0; i < checks.size(); i++) {
                slopes[i][j] = -falls[i];
            }
        }
        return slopes;
    }

    /** By how much the differences grow by a unit of an input. */
    private double[] falls(Input input) {
        return falls(Setting.of(input), bike.get(input));
    }

    /** By how much the differences grow by a unit of a number that has another value; NaN where nothing follows. */
    double[] falls(Setting setting, double value) {
        Map<Double, double[]> known = new HashMap<>();
        Variation variation = Variation.of(bike, setting, Mode.REDRAW);
        double step = Derivative.step(setting.quantity(), value);
        return IntStream.range(0, checks.size())
                .mapToDouble(i -> Derivative.at0(
                                by -> known.computeIfAbsent(by, off -> differences(variation, value + off))[i],
                                step,
                                Derivative.COARSE)
                        .slope())
                .toArray();
    }

    private double[] differences(Variation variation, double value) {
        return Along.plain(variation)
                .at(value)
                .map(this::differences)
                .orElseGet(() -> DoubleStream.generate(() -> Double.NaN)
                        .limit(checks.size())
                        .toArray());
    }
}
