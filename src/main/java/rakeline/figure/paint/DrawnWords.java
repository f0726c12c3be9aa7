package rakeline.figure.paint;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.figure.Drawing;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Label;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Point;
import rakeline.figure.PlainText;

/** The words of a drawing, each in a place of its own beside what it names. */
record DrawnWords(List<Word> words) {
    private static final double NEAR = 4;
    private static final int FURTHER_STEPS = 12;

    /** One piece of text and its box on the sheet. */
    record Word(String text, Rectangle2D box, boolean isSoft) {
        void draw(Graphics2D pen, Palette palette) {
            Color colour = isSoft ? palette.soft() : palette.ink();
            Lettering.SMALL.draw(pen, colour, text, box.getX(), box.getY());
        }
    }

    /** Places as many as the sheet has room for, those of dimensions first. */
    static DrawnWords placed(Drawing drawing, Placement placement, Rectangle2D sheet) {
        Placer placer = new Placer(sheet, Outline.pieces(drawing, placement));
        Point centre = Outline.centre(drawing);
        List<Word> words = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Dimension dimension) {
                word(placer, dimension.text(), besideLine(dimension, placement, centre), dimension.ink())
                        .ifPresent(words::add);
            }
        }
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Label label) {
                word(placer, label.text(), around(placement.toPx(label.at())), label.ink())
                        .ifPresent(words::add);
            }
        }
        return new DrawnWords(List.copyOf(words));
    }

    /** The boxes of all words where they would stand if there were no other. */
    static Stream<Rectangle2D> firstPlaces(Drawing drawing, Placement placement) {
        Point centre = Outline.centre(drawing);
        return drawing.marks().stream().flatMap(mark -> {
            if (mark instanceof Dimension dimension) {
                return firstPlace(dimension.text(), besideLine(dimension, placement, centre));
            }
            return mark instanceof Label label
                    ? firstPlace(label.text(), around(placement.toPx(label.at())))
                    : Stream.empty();
        });
    }

    private static Stream<Rectangle2D> firstPlace(String text, List<Spot> spots) {
        String plain = PlainText.oneLine(text).strip();
        return plain.isEmpty()
                ? Stream.empty()
                : Stream.of(spots.get(0).box(Lettering.SMALL.width(plain), Lettering.SMALL.lineHeight()));
    }

    /** How many words a drawing has. */
    static long count(Drawing drawing) {
        return drawing.marks().stream()
                .filter(mark -> (mark instanceof Dimension dimension
                                && !dimension.text().isBlank())
                        || (mark instanceof Label label && !label.text().isBlank()))
                .count();
    }

    /** A point that words may stand at, and on which side of it: -1 left or above, 0 about it, 1 right or below. */
    private record Spot(double x, double y, double sideX, double sideY) {
        Rectangle2D box(double width, double height) {
            return new Rectangle2D.Double(
                    x + sideX * NEAR - width / 2 * (1 - sideX),
                    y + sideY * NEAR - height / 2 * (1 - sideY),
                    width,
                    height);
        }

        Spot further(double distance) {
            return new Spot(x + sideX * distance, y + sideY * distance, sideX, sideY);
        }
    }

    private static Optional<Word> word(Placer placer, String text, List<Spot> spots, Ink ink) {
        String plain = PlainText.oneLine(text).strip();
        if (plain.isEmpty()) {
            return Optional.empty();
        }
        double width = Lettering.SMALL.width(plain);
        double height = Lettering.SMALL.lineHeight();
        List<Rectangle2D> boxes = new ArrayList<>();
        for (int step = 0; step < FURTHER_STEPS; step++) {
            double distance = step * height / 2;
            spots.forEach(spot -> boxes.add(spot.further(distance).box(width, height)));
        }
        return placer.place(boxes).map(box -> new Word(plain, box, ink != Ink.BOLD));
    }

    /** 1 where outside is to the left of the line's direction: where it was moved to, else away from the drawing's centre. */
    private static double side(Dimension dimension, Point centre) {
        if (dimension.offset() != 0) {
            return Math.signum(dimension.offset());
        }
        Line2D line = Outline.lineOf(dimension);
        Point out = Outline.out(dimension);
        double away = out.x() * ((line.getX1() + line.getX2()) / 2 - centre.x())
                + out.y() * ((line.getY1() + line.getY2()) / 2 - centre.y());
        return away < 0 ? -1 : 1;
    }

    /** Outside the middle of the line, then inside it, then at its ends. */
    private static List<Spot> besideLine(Dimension dimension, Placement placement, Point centre) {
        Line2D mm = Outline.lineOf(dimension);
        Point2D one = placement.toPx(new Point(mm.getX1(), mm.getY1()));
        Point2D other = placement.toPx(new Point(mm.getX2(), mm.getY2()));
        Point out = Outline.out(dimension);
        double side = side(dimension, centre);
        double x = (one.getX() + other.getX()) / 2;
        double y = (one.getY() + other.getY()) / 2;
        double outX = side * out.x();
        double outY = -side * out.y();
        double half = one.distance(other) / 2 + MarkPainter.arrowBeyond(one.distance(other));
        return List.of(
                new Spot(x, y, outX, outY),
                new Spot(x, y, -outX, -outY),
                new Spot(x + half * outY, y - half * outX, outY, -outX),
                new Spot(x - half * outY, y + half * outX, -outY, outX));
    }

    /** Under the point, then above, right and left of it. */
    private static List<Spot> around(Point2D at) {
        return List.of(
                new Spot(at.getX(), at.getY(), 0, 1),
                new Spot(at.getX(), at.getY(), 0, -1),
                new Spot(at.getX(), at.getY(), 1, 0),
                new Spot(at.getX(), at.getY(), -1, 0));
    }
}
