package rakeline.study.fit;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Limit;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.study.Vocabulary;

/**
 * What several bikes have left to one limit.
 *
 * @param limit its value NaN where it is another for each bike
 * @param values the limited numbers; NaN where a bike has none
 * @param left what is left of each; negative beyond the limit, by how far
 */
public record Left(Quantity quantity, Limit limit, Numbers values, Numbers left) {
    /**
     * Every declared limit, no rule, that at least one of the bikes has a number for, those of parts and feet first; then what is
     * to spare of crank, cleat position, tyre and guard.
     */
    public static List<Left> of(Vocabulary vocabulary, List<Ride> rides) {
        Stream<Left> parts = concerned(vocabulary).flatMap(measure -> limits(measure, rides));
        Stream<Left> others = others(vocabulary).flatMap(measure -> limits(measure, rides));
        return Stream.of(parts, Spare.of(rides).stream(), others)
                .flatMap(rows -> rows)
                .filter(row -> row.left().stream().anyMatch(Double::isFinite))
                .toList();
    }

    /** The ranges that race rules and recommendations set, and what bikes have left to them. */
    public static List<Left> rules(Vocabulary vocabulary, List<Ride> rides) {
        return Stream.concat(concerned(vocabulary), others(vocabulary))
                .flatMap(measure -> limits(measure, Limit::rule, rides))
                .filter(row -> row.left().stream().anyMatch(Double::isFinite))
                .toList();
    }

    private static Stream<Left> limits(Measure<Ride> measure, List<Ride> rides) {
        return limits(measure, limit -> limit.bounds() && !limit.rule(), rides);
    }

    private static Stream<Left> limits(Measure<Ride> measure, Predicate<Limit> wanted, List<Ride> rides) {
        return measure.quantity().limits().stream().filter(wanted).map(limit -> of(measure, limit, rides));
    }

    private static Left of(Measure<Ride> measure, Limit limit, List<Ride> rides) {
        Numbers values =
                Numbers.generate(rides.size(), i -> measure.read(rides.get(i)).orNaN());
        return new Left(measure.quantity(), limit, values, values.map(limit::leftOf));
    }

    private static Stream<Measure<Ride>> concerned(Vocabulary vocabulary) {
        return keysOfParts().stream().map(vocabulary::tracked);
    }

    private static Stream<Measure<Ride>> others(Vocabulary vocabulary) {
        List<String> told = keysOfParts();
        Stream<String> inputs = Inputs.all().stream().map(Input::key);
        return Stream.concat(vocabulary.measures().keySet().stream(), inputs)
                .filter(key -> !told.contains(key))
                .map(vocabulary::tracked);
    }

    private static List<String> keysOfParts() {
        return Stream.of(Concern.values())
                .flatMap(concern -> concern.usual().stream().map(Measure::key))
                .toList();
    }
}
