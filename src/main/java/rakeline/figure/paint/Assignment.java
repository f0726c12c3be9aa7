package rakeline.figure.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Which series each measure is, by key, so that a measure looks the same in every chart, table and drawing of a page.
 *
 * @param named keys in the order of their series; others take a place of their own by a hash of the key
 */
public record Assignment(List<String> named) {
    /** Styles that differ (four colours in four rounds of dash and marker). */
    private static final int PLACES = 16;

    private static final int COLOURS = 4;

    /** The measures that are charted most. */
    public static final Assignment STANDARD =
            new Assignment(List.of("trailMm", "wheelbaseMm", "toeRoomMm", "wheelFlopMm"));

    public Assignment {
        named = named.stream().distinct().toList();
    }

    /** This one with more keys named after those it has. */
    public Assignment and(List<String> keys) {
        List<String> more = new ArrayList<>(named);
        more.addAll(keys);
        return new Assignment(more);
    }

    /** Whether a measure has a colour outside charts too. */
    public boolean names(String key) {
        return named.contains(key);
    }

    /** The series of one key alone. */
    public int place(String key) {
        int place = named.indexOf(key);
        return place >= 0 ? place : Math.floorMod(key.hashCode(), PLACES);
    }

    /** The series of keys shown together: named ones keep theirs, others take free ones of colours not yet used. */
    List<Integer> places(List<String> keys) {
        Map<Integer, Integer> placeByIndex = new TreeMap<>();
        for (int i = 0; i < keys.size(); i++) {
            if (names(keys.get(i)) && !placeByIndex.containsValue(place(keys.get(i)))) {
                placeByIndex.put(i, place(keys.get(i)));
            }
        }
        for (int i = 0; i < keys.size(); i++) {
            placeByIndex.putIfAbsent(i, free(place(keys.get(i)), Set.copyOf(placeByIndex.values())));
        }
        return List.copyOf(placeByIndex.values());
    }

    /** The next free place, of a colour of its own while there is one. */
    private static int free(int from, Set<Integer> taken) {
        Set<Integer> colours = taken.stream().map(place -> place % COLOURS).collect(Collectors.toSet());
        return IntStream.iterate(from, place -> place + 1)
                .filter(place -> !taken.contains(place))
                .filter(place -> colours.size() == COLOURS || !colours.contains(place % COLOURS))
                .findFirst()
                .orElseThrow();
    }
}
