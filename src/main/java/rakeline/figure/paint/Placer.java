package rakeline.figure.paint;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds places for words so that none meets another or leaves the sheet, and few lines run through them. */
final class Placer {
    private static final double AIR = 2;

    /** What a later box costs, in crossed lines. */
    private static final double LATENESS = 0.15;

    private final Rectangle2D sheet;
    private final List<Line2D> lines;
    private final List<Line2D> broken;
    private final List<Rectangle2D> taken = new ArrayList<>();

    Placer(Rectangle2D sheet, List<Line2D> lines) {
        this(sheet, lines, List.of());
    }

    /** @param broken lesser lines, which may be broken for words */
    Placer(Rectangle2D sheet, List<Line2D> lines, List<Line2D> broken) {
        this.sheet = sheet;
        this.lines = List.copyOf(lines);
        this.broken = List.copyOf(broken);
    }

    /** Keeps words away from there. */
    void take(Rectangle2D box) {
        taken.add(box);
    }

    /** The first of the boxes that no line crosses, now taken. */
    Optional<Rectangle2D> placeClear(List<? extends Rectangle2D> boxes) {
        return first(boxes, box -> !covers(box));
    }

    /** The first of the boxes that no line crosses but one that may be broken, now taken. */
    Optional<Rectangle2D> placeBreaking(List<? extends Rectangle2D> boxes) {
        return first(boxes, box -> crossings(lines, box) == 0);
    }

    private Optional<Rectangle2D> first(List<? extends Rectangle2D> boxes, Predicate<Rectangle2D> wanted) {
        return taking(boxes.stream()
                .map(Rectangle2D.class::cast)
                .filter(this::isFree)
                .filter(wanted)
                .findFirst());
    }

    /** The best of the boxes, early ones and those that few lines cross; none where all meet words or leave the sheet. */
    Optional<Rectangle2D> place(List<? extends Rectangle2D> boxes) {
        Rectangle2D best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < boxes.size(); i++) {
            Rectangle2D box = boxes.get(i);
            if (i * LATENESS < least && isFree(box)) {
                double cost = i * LATENESS + crossings(lines, box);
                best = cost < least ? box : best;
                least = Math.min(least, cost);
            }
        }
        return taking(Optional.ofNullable(best));
    }

    private Optional<Rectangle2D> taking(Optional<Rectangle2D> found) {
        found.ifPresent(this::take);
        return found;
    }

    private boolean isFree(Rectangle2D box) {
        return sheet.contains(box)
                && taken.stream().noneMatch(other -> aired(box).intersects(other));
    }

    /** Whether any line runs through it. */
    boolean covers(Rectangle2D box) {
        return crossings(lines, box) + crossings(broken, box) > 0;
    }

    private static long crossings(List<Line2D> lines, Rectangle2D box) {
        Rectangle2D aired = aired(box);
        return lines.stream().filter(line -> line.intersects(aired)).count();
    }

    private static Rectangle2D aired(Rectangle2D box) {
        return new Rectangle2D.Double(
                box.getX() - AIR, box.getY() - AIR, box.getWidth() + 2 * AIR, box.getHeight() + 2 * AIR);
    }
}
