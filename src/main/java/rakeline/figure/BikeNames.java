package rakeline.figure;

import java.util.List;
import java.util.stream.IntStream;
import rakeline.handling.Ride;

/** Names of bikes above their columns. */
final class BikeNames {
    private BikeNames() {}

    /** The names; one that begins with the first's says only what it adds. */
    static List<String> above(List<Ride> rides) {
        return IntStream.range(0, rides.size()).mapToObj(i -> above(rides, i)).toList();
    }

    private static String above(List<Ride> rides, int i) {
        String name = rides.get(i).bike().name();
        String first = rides.get(0).bike().name() + ", ";
        return i > 0 && name.startsWith(first) ? name.substring(first.length()) : name;
    }
}
