package rakeline.study;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Unit;

/** What the tests of studies have in common. */
final class Rides {
    private Rides() {}

    static Measure<Ride> measure(String key) {
        return Vocabulary.standard().tracked(key);
    }

    static List<Measure<Ride>> tracks(String... keys) {
        return Stream.of(keys).map(Rides::measure).toList();
    }

    static Target target(String key, double value) {
        return new Target(measure(key), value);
    }

    static Span span(String key, double from, double to) {
        return new Span(Varied.of(Setting.of(key)), from, to);
    }

    static Span span(String key) {
        return Span.of(Varied.of(Setting.of(key)));
    }

    static GridMap.Axis axis(String key, double from, double to, double step) {
        return new GridMap.Axis(Varied.of(Setting.of(key)), Steps.of(from, to, step));
    }

    static double value(Bike bike, String key) {
        return measure(key).read(Ride.of(bike)).orNaN();
    }

    /** A measure made for a test, NaN where it has no value. */
    static Measure<Ride> fixture(ToDoubleFunction<Bike> formula) {
        Quantity quantity = Quantity.of("fixtureMm", "Fixture", Unit.MILLIMETRE, "A formula of a test.")
                .declared();
        return new Measure<>(quantity, ride -> Reading.of(formula.applyAsDouble(ride.bike())));
    }
}
