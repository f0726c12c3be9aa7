package rakeline.figure.paint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which series each measure is, by key, so that a measure looks the same in every chart, table and drawing of a page.
 *
 * @param named keys in the order of their series; others take a place of their own by a hash of the key
 */
public record Assignment(List<String> named) {
    /** Styles that differ (four colours in four rounds of dash and marker). */
    private static final int PLACES = 16;

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

    /** The series of keys shown together: each its own where that is free, else the next free one. */
    public List<Integer> places(List<String> keys) {
        Set<Integer> taken = new HashSet<>();
        List<Integer> places = new ArrayList<>();
        for (String key : keys) {
            int place = place(key);
            while (taken.contains(place)) {
                place++;
            }
            taken.add(place);
            places.add(place);
        }
        return List.copyOf(places);
    }
}
