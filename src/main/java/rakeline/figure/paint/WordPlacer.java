package rakeline.figure.paint;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rakeline.figure.Drawing;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Label;
import rakeline.figure.Drawing.Point;
import rakeline.figure.PlainText;
import rakeline.figure.paint.DrawnWords.Word;

/**
 * Finds places for the words of a drawing: beside what they name and clear of every line; else over a line that only
 * leads to a dimension, which is broken for them; else off it with a line that leads there; over lines at the last.
 *
 * @param dimensions the lines of all dimensions, which no leading line crosses
 */
record WordPlacer(Placer placer, List<Line2D> dimensions) {
    /** Steps of half a line of words: up to the first number they stand beside what they name, up to the second off it. */
    private static final int NEAR_STEPS = 3;

    private static final int FURTHER_STEPS = 14;

    static WordPlacer of(Drawing drawing, Placement placement, Rectangle2D sheet) {
        Placer placer = new Placer(sheet, Outline.pieces(drawing, placement), Outline.extensions(drawing, placement));
        return new WordPlacer(placer, Outline.dimensions(drawing, placement));
    }

    Optional<Word> place(Label label, Placement placement) {
        String words = PlainText.oneLine(label.text()).strip();
        return words.isEmpty() ? Optional.empty() : place(words, Spot.around(placement.toPx(label.at())), label.ink());
    }

    private Optional<Word> place(String words, List<Spot> spots, Ink ink) {
        List<Rectangle2D> all = boxes(words, spots, 0, FURTHER_STEPS);
        return placer.placeClear(all).or(() -> placer.place(all)).map(box -> word(words, box, ink));
    }

    Optional<Word> place(Dimension dimension, Placement placement, Point centre) {
        String words = PlainText.oneLine(dimension.text()).strip();
        if (words.isEmpty()) {
            return Optional.empty();
        }
        List<Spot> spots = Spot.besideLine(dimension, placement, centre, Lettering.SMALL.width(words));
        Line2D named = Spot.onSheet(dimension, placement);
        List<Rectangle2D> near = boxes(words, spots, 0, NEAR_STEPS).stream()
                .filter(box -> isBeside(named, box))
                .toList();
        return placer.placeClear(near)
                .or(() -> placer.placeBreaking(near))
                .map(box -> word(words, box, dimension.ink()))
                .or(() -> led(words, dimension.ink(), spots, named))
                .or(() -> placer.place(boxes(words, spots, 0, FURTHER_STEPS))
                        .map(box -> word(words, box, dimension.ink())));
    }

    /** Whether words stand at the line that they name, not at another dimension's. */
    private boolean isBeside(Line2D named, Rectangle2D box) {
        double own = apart(named, box);
        return others(named).noneMatch(line -> apart(line, box) + Lettering.SMALL.lineHeight() / 2 < own);
    }

    /** From a line to the nearest of a box's corners and middles of its edges. */
    private static double apart(Line2D line, Rectangle2D box) {
        return line.intersects(box)
                ? 0
                : DoubleStream.of(0, 0.5, 1)
                        .flatMap(x -> DoubleStream.of(0, 0.5, 1)
                                .map(y -> line.ptSegDist(
                                        box.getX() + x * box.getWidth(), box.getY() + y * box.getHeight())))
                        .min()
                        .orElseThrow();
    }

    private Optional<Word> led(String words, Ink ink, List<Spot> spots, Line2D named) {
        List<Rectangle2D> off = boxes(words, spots, NEAR_STEPS, FURTHER_STEPS).stream()
                .filter(box -> isAlone(leader(named, box), named))
                .toList();
        return placer.placeClear(off)
                .map(box -> new Word(words, box, ink != Ink.BOLD, false, Optional.of(leader(named, box))));
    }

    /** Whether a leading line crosses no dimension but its own. */
    private boolean isAlone(Line2D leader, Line2D named) {
        return others(named).noneMatch(leader::intersectsLine);
    }

    private Stream<Line2D> others(Line2D named) {
        return dimensions.stream().filter(line -> line.ptSegDist(named.getP1()) + line.ptSegDist(named.getP2()) > 1);
    }

    private Word word(String words, Rectangle2D box, Ink ink) {
        return new Word(words, box, ink != Ink.BOLD, placer.covers(box), Optional.empty());
    }

    private static List<Rectangle2D> boxes(String words, List<Spot> spots, int from, int to) {
        double width = Lettering.SMALL.width(words);
        double height = Lettering.SMALL.lineHeight();
        List<Rectangle2D> boxes = new ArrayList<>();
        for (int step = from; step < to; step++) {
            double distance = step * height / 2;
            spots.forEach(spot -> boxes.add(spot.further(distance).box(width, height)));
        }
        return boxes;
    }

    /** From the nearest edge of the words to the middle of the line that they name. */
    private static Line2D leader(Line2D named, Rectangle2D box) {
        double x = (named.getX1() + named.getX2()) / 2;
        double y = (named.getY1() + named.getY2()) / 2;
        double fromX = Math.max(box.getX(), Math.min(box.getMaxX(), x));
        double fromY = Math.max(box.getY() + 2, Math.min(box.getMaxY() - 2, y));
        return new Line2D.Double(fromX, fromY, x, y);
    }
}
