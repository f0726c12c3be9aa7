package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.figure.Drawing;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Label;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Point;
import rakeline.figure.PlainText;

/** The words of a drawing, each in a place of its own beside what it names. */
record DrawnWords(List<Word> words) {
    /**
     * One piece of text and its box on the sheet.
     *
     * @param covers whether it stands over lines, which are broken for it
     * @param leader to what it names, where it stands off that
     */
    record Word(String text, Rectangle2D box, boolean isSoft, boolean covers, Optional<Line2D> leader) {
        void draw(Graphics2D pen, Palette palette) {
            if (covers) {
                pen.setColor(palette.card());
                pen.fill(box);
            }
            leader.ifPresent(line -> draw(pen, palette, line));
            Color colour = isSoft ? palette.soft() : palette.ink();
            Lettering.SMALL.draw(pen, colour, text, box.getX(), box.getY());
        }

        private static void draw(Graphics2D pen, Palette palette, Line2D line) {
            pen.setColor(palette.faint());
            pen.setStroke(new BasicStroke(palette.line(1)));
            pen.draw(line);
        }
    }

    /** Places as many as the sheet has room for, those of dimensions first. */
    static DrawnWords placed(Drawing drawing, Placement placement, Rectangle2D sheet) {
        WordPlacer placer = WordPlacer.of(drawing, placement, sheet);
        Point centre = Outline.centre(drawing);
        List<Word> words = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Dimension dimension) {
                placer.place(dimension, placement, centre).ifPresent(words::add);
            }
        }
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Label label) {
                placer.place(label, placement).ifPresent(words::add);
            }
        }
        return new DrawnWords(List.copyOf(words));
    }

    /** The boxes of all words where they would stand if there were no other. */
    static Stream<Rectangle2D> firstPlaces(Drawing drawing, Placement placement) {
        Point centre = Outline.centre(drawing);
        return drawing.marks().stream().flatMap(mark -> {
            if (mark instanceof Dimension dimension) {
                return firstPlace(dimension.text(), Spot.besideLine(dimension, placement, centre, 0));
            }
            return mark instanceof Label label
                    ? firstPlace(label.text(), Spot.around(placement.toPx(label.at())))
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
}
