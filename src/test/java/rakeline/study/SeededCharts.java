package rakeline.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Unit;

/**
 * Made-up charts, the same for the same seed: a frame drawn to any number, every number then printed to 1 mm or 0.1°,
 * the charted ones computed before that. Tubes that miss BB, and more or fewer charted numbers.
 */
final class SeededCharts {
    private static final List<String> ALWAYS = List.of("wheelbaseMm", "trailMm");
    private static final List<String> OFTEN =
            List.of("frontCentreMm", "effectiveTopTubeMm", "bbHeightMm", "standoverMm");
    private static final double[] TYRES = {23, 25, 28, 32, 37, 42};

    private final Random random;

    SeededCharts(long seed) {
        this.random = new Random(seed * 7919 + 3);
    }

    /** A chart without an error. */
    Bike clean() {
        Bike drawn = drawn();
        Map<Input, Double> printed = new HashMap<>();
        Inputs.all().stream()
                .filter(input -> drawn.given().has(input) && !input.key().startsWith("wheels."))
                .forEach(input -> printed.put(input, toStep(drawn.get(input), step(input))));
        Stream.concat(ALWAYS.stream(), OFTEN.stream().filter(any -> random.nextDouble() < 0.6))
                .forEach(name -> printed.put(charted(name), toStep(value(drawn, name), 1)));
        return drawn.redraw(printed);
    }

    /** One of its numbers put wrong by 3 to 15 mm, or by 0.3 to 1.5°: the charted ones, or one that tells on them. */
    String key(Bike chart) {
        List<String> keys = Inputs.all().stream()
                .filter(input -> chart.given().has(input))
                .map(Input::key)
                .filter(key -> key.matches("charted\\..*|frame\\.[a-zA-Z]*|fork.offsetMm"))
                .toList();
        return keys.get(random.nextInt(keys.size()));
    }

    Bike wrong(Bike chart, String key) {
        Input input = Setting.of(key).inputs().get(0);
        double error = between(3, 15) * (random.nextBoolean() ? 1 : -1) * step(input);
        return chart.with(key, toStep(chart.get(key) + error, step(input)));
    }

    private Bike drawn() {
        double larger = random.nextDouble();
        Map<String, Double> numbers = new HashMap<>(Map.of(
                "frame.stackMm",
                490 + 145 * larger,
                "frame.reachMm",
                between(355, 375) + 35 * larger,
                "frame.headAngleDeg",
                between(69.5, 71) + 2.5 * larger,
                "frame.seatAngleDeg",
                between(73.8, 75) - 1.5 * larger,
                "frame.chainstayMm",
                between(390, 455),
                "frame.bbDropMm",
                between(53, 80),
                "fork.offsetMm",
                between(35, 55),
                "wheels.both.beadSeatMm",
                622.0,
                "wheels.both.tyreMm",
                TYRES[random.nextInt(TYRES.length)]));
        numbers.putAll(Map.of(
                "frame.topTube.headJunctionMm", 40.0,
                "frame.topTube.seatJunctionMm", between(380, 520),
                "frame.topTube.diameterMm", 32.0));
        if (random.nextBoolean()) {
            numbers.put("frame.seatTubeAngleDeg", numbers.get("frame.seatAngleDeg") - between(1.5, 4));
        }
        return Bikes.of(numbers);
    }

    private static Input charted(String name) {
        return Setting.of("charted." + name).inputs().get(0);
    }

    private static double value(Bike bike, String measure) {
        return Vocabulary.standard().measure(measure).read(Ride.of(bike)).orNaN();
    }

    private double between(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    private static double step(Input input) {
        return input.quantity().unit() == Unit.DEGREE ? 0.1 : 1;
    }

    private static double toStep(double value, double step) {
        return Math.rint(Math.rint(value / step) * step * 1e6) / 1e6;
    }
}
