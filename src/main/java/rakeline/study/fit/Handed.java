package rakeline.study.fit;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rakeline.geometry.Hands;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;

/** Measures read with the hands in several places. */
final class Handed {
    private Handed() {}

    /** The measure once for each place of the hands where it depends on them; once where it does not. */
    static Stream<Measure<Ride>> spread(Measure<Ride> measure, List<Contender> contenders, List<Hands> hands) {
        boolean depends = contenders.stream()
                .anyMatch(one -> hands.stream()
                                .map(where -> measure.read(with(one.ride(), where)))
                                .distinct()
                                .count()
                        > 1);
        return depends ? hands.stream().map(where -> at(measure, where)) : Stream.of(measure);
    }

    private static Measure<Ride> at(Measure<Ride> measure, Hands where) {
        Quantity plain = measure.quantity();
        String word = where.name().toLowerCase(Locale.ROOT);
        return new Measure<>(
                plain.named(word + "." + plain.key(), plain.label() + " (" + word + ")"),
                ride -> measure.read(with(ride, where)));
    }

    private static Ride with(Ride ride, Hands hands) {
        return ride.geometry().hands() == hands ? ride : ride.with(hands);
    }
}
