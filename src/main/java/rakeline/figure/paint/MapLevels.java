package rakeline.figure.paint;

import java.awt.Color;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import rakeline.figure.MapFigure;
import rakeline.quantity.Limit;
import rakeline.quantity.Range;

/**
 * The values at which a map draws its lines, upward, and the shades between them: one hue from light to dark, so that
 * they keep their order in grey and for every eye.
 */
record MapLevels(Ticks ticks, List<Double> values) {
    private static final int MOST = 12;
    private static final double LIGHTEST = 0.04;
    private static final double DARKEST = 0.72;

    /** Empty where the map has no value at all. */
    static Optional<MapLevels> of(MapFigure map) {
        DoubleSummaryStatistics known =
                map.values().stream().filter(Double::isFinite).summaryStatistics();
        if (known.getCount() == 0) {
            return Optional.empty();
        }
        double flat = known.getMin() == known.getMax() ? 0.5 : 0;
        Range range = new Range(known.getMin() - flat, known.getMax() + flat);
        Ticks ticks = Ticks.in(range, MOST, Double.MIN_NORMAL);
        List<Double> inside = new ArrayList<>(ticks.values());
        inside.removeIf(value -> value <= range.from() || value >= range.to());
        return Optional.of(new MapLevels(ticks, List.copyOf(inside)));
    }

    /** The shade above so many of the levels. */
    Color shade(int above, Palette palette) {
        double share = values.isEmpty() ? LIGHTEST : LIGHTEST + (DARKEST - LIGHTEST) * above / values.size();
        Color from = palette.card();
        Color to = palette.series().get(0);
        return new Color(
                mixed(from.getRed(), to.getRed(), share),
                mixed(from.getGreen(), to.getGreen(), share),
                mixed(from.getBlue(), to.getBlue(), share));
    }

    String text(double level, MapFigure map) {
        return ticks.text(level, map.measure().unit());
    }

    /** The measure's limits that some of the map lies above and some below. */
    static List<Limit> limits(MapFigure map) {
        DoubleSummaryStatistics known =
                map.values().stream().filter(Double::isFinite).summaryStatistics();
        return map.measure().limits().stream()
                .filter(limit -> limit.value() > known.getMin() && limit.value() < known.getMax())
                .toList();
    }

    private static int mixed(int from, int to, double share) {
        return (int) Math.round(from + (to - from) * share);
    }
}
