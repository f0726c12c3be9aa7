package rakeline.study.fit;

import java.util.ArrayList;
import java.util.List;
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
 * @param values the limited numbers; NaN where a bike has none
 * @param left what is left of each; negative beyond the limit, by how far
 */
public record Left(Quantity quantity, Limit limit, Numbers values, Numbers left) {
    /** Every declared limit that at least one of the bikes has a number for; those of parts and feet first. */
    public static List<Left> of(Vocabulary vocabulary, List<Ride> rides) {
        List<Left> all = new ArrayList<>();
        order(vocabulary)
                .forEach(measure -> measure.quantity().limits().stream()
                        .map(limit -> of(measure, limit, rides))
                        .filter(row -> row.values().stream().anyMatch(Double::isFinite))
                        .forEach(all::add));
        return List.copyOf(all);
    }

    private static Left of(Measure<Ride> measure, Limit limit, List<Ride> rides) {
        Numbers values =
                Numbers.generate(rides.size(), i -> measure.read(rides.get(i)).orNaN());
        return new Left(measure.quantity(), limit, values, values.map(limit::leftOf));
    }

    private static Stream<Measure<Ride>> order(Vocabulary vocabulary) {
        Stream<String> first = Stream.of(Concern.values())
                .flatMap(concern -> concern.usual().stream().map(Measure::key));
        Stream<String> measures = vocabulary.measures().keySet().stream();
        Stream<String> inputs = Inputs.all().stream().map(Input::key);
        return Stream.of(first, measures, inputs)
                .flatMap(keys -> keys)
                .distinct()
                .map(vocabulary::tracked);
    }
}
