package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Refit;
import rakeline.handling.Ride;
import rakeline.quantity.Input;

/** What bikes beside each other are called: a variant by what differs from the bike whose name it has. */
final class BikeNames {
    /** So many differing numbers tell a variant. */
    private static final int TELLING = 2;

    private BikeNames() {}

    /** The names, each once: {@code Road XS}, {@code Road XS, front tyre 32 mm}. */
    static List<String> of(List<Ride> rides) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < rides.size(); i++) {
            Bike bike = rides.get(i).bike();
            names.add(rides.subList(0, i).stream()
                    .map(Ride::bike)
                    .filter(other -> other.name().equals(bike.name()))
                    .findFirst()
                    .map(other -> variant(bike, other))
                    .orElse(bike.name()));
        }
        return List.copyOf(names);
    }

    /** The names in one line. */
    static String line(List<Ride> rides) {
        return String.join(", ", of(rides));
    }

    /** The names above their columns; one that begins with the first's says only what it adds. */
    static List<String> above(List<Ride> rides) {
        List<String> names = of(rides);
        String first = names.get(0) + ", ";
        return IntStream.range(0, names.size())
                .mapToObj(i ->
                        i > 0 && names.get(i).startsWith(first) ? names.get(i).substring(first.length()) : names.get(i))
                .toList();
    }

    /** Fork and wheels before what turned with them. */
    private static String variant(Bike bike, Bike of) {
        List<Input> differing = Inputs.all().stream()
                .filter(input -> bike.given().has(input) && Double.compare(bike.get(input), of.get(input)) != 0)
                .toList();
        List<Input> exchanged = differing.stream().filter(Refit::exchanges).toList();
        Stream<String> told = (exchanged.isEmpty() ? differing : exchanged)
                .stream()
                        .limit(TELLING)
                        .map(input -> input.quantity().inSentence() + " "
                                + input.quantity().said(bike.get(input)));
        return String.join(", ", Stream.concat(Stream.of(bike.name()), told).toList());
    }
}
