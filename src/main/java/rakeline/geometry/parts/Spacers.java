package rakeline.geometry.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Stock spacers and how far they may be stacked.
 *
 * @param heightsMm single spacers, each at hand as often as wanted
 * @param upToMm how far stacks are tried
 * @param limitMm allowed below the stem where the fork does not say
 */
public record Spacers(List<Double> heightsMm, double upToMm, double limitMm) {
    /** What forks without a limit of their own are taken to allow: a cautious figure of common practice. */
    public static final double USUAL_LIMIT_MM = 30;

    private static final double GRAIN = 1e6;

    public Spacers {
        heightsMm = heightsMm.stream().distinct().sorted().toList();
    }

    /** Every height that can be stacked, none included, with the fewest spacers that make it, largest first. */
    public Map<Double, List<Double>> stacks() {
        TreeMap<Double, List<Double>> found = new TreeMap<>(Map.of(0.0, List.of()));
        TreeMap<Double, List<Double>> latest = found;
        while (!latest.isEmpty()) {
            latest = oneMore(latest, found);
            found.putAll(latest);
        }
        return found;
    }

    /** Stacks with one spacer more that no smaller number of them makes. */
    private TreeMap<Double, List<Double>> oneMore(
            TreeMap<Double, List<Double>> stacks, TreeMap<Double, List<Double>> known) {
        TreeMap<Double, List<Double>> more = new TreeMap<>();
        stacks.forEach((height, pieces) -> heightsMm.forEach(piece -> {
            double sum = Math.rint((height + piece) * GRAIN) / GRAIN;
            if (sum <= upToMm && !known.containsKey(sum)) {
                more.putIfAbsent(sum, with(pieces, piece));
            }
        }));
        return more;
    }

    private static List<Double> with(List<Double> pieces, double piece) {
        List<Double> all = new ArrayList<>(pieces);
        all.add(piece);
        all.sort((one, other) -> Double.compare(other, one));
        return List.copyOf(all);
    }
}
