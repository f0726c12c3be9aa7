package rakeline.figure.paint;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import rakeline.figure.Drawing;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Label;
import rakeline.figure.Drawing.Mark;

/** Draws a drawing as a draughtsman would: a few weights of one ink, dimensions outside, all of it inside its area. */
public final class DrawingPainter extends FigurePainter {
    private static final double MARGIN = 10;
    private static final double LOWEST = 140;
    private static final double TALLEST = 0.9;
    private static final int FITS = 12;

    private final Drawing drawing;
    private final Assignment assignment;

    DrawingPainter(Drawing drawing, Palette palette, double scale, Assignment assignment) {
        super(drawing, palette, scale);
        this.drawing = drawing;
        this.assignment = assignment;
    }

    @Override
    double bodyHeight(double width) {
        Rectangle2D mm = Outline.bounds(drawing);
        double height = (width - 2 * MARGIN) * mm.getHeight() / Math.max(1, mm.getWidth());
        return Math.min(TALLEST * width, Math.max(LOWEST, height + 2 * MARGIN + 2 * Lettering.SMALL.lineHeight()));
    }

    @Override
    double leastBodyHeight(double width) {
        return Math.min(LOWEST, bodyHeight(width));
    }

    @Override
    List<String> notes(double width) {
        return List.of();
    }

    @Override
    void paintBody(Graphics2D pen, Rectangle2D body) {
        Sheet sheet = fitted(body);
        MarkPainter painter = new MarkPainter(sheet.placement(), palette(), assignment);
        drawing.marks().stream()
                .filter(mark -> !(mark instanceof Label))
                .sorted(Comparator.comparing(DrawingPainter::layer))
                .forEach(mark -> painter.draw(pen, mark));
        sheet.words().words().forEach(word -> word.draw(pen, palette()));
    }

    private record Sheet(Placement placement, DrawnWords words) {}

    /** Shrinks the drawing on its sheet until every word finds a place; at the last size some may be left out. */
    private Sheet fitted(Rectangle2D body) {
        Rectangle2D mm = Outline.bounds(drawing);
        long wanted = DrawnWords.count(drawing);
        double inset = MARGIN;
        Sheet sheet = sheet(mm, body, inset);
        for (int i = 0; i < FITS && sheet.words().words().size() < wanted; i++) {
            inset += 0.03 * Math.min(body.getWidth(), body.getHeight());
            sheet = sheet(mm, body, inset);
        }
        return sheet;
    }

    private Sheet sheet(Rectangle2D mm, Rectangle2D body, double inset) {
        Rectangle2D area = new Rectangle2D.Double(
                body.getX() + inset,
                body.getY() + inset,
                Math.max(1, body.getWidth() - 2 * inset),
                Math.max(1, body.getHeight() - 2 * inset));
        Placement placement = Placement.fitting(mm, area);
        return new Sheet(placement, DrawnWords.placed(drawing, placement, body));
    }

    /** What is drawn first: the faint under the bodies under the bicycle, dimensions on top. */
    private static int layer(Mark mark) {
        if (mark instanceof Dimension) {
            return Ink.values().length;
        }
        return switch (mark.ink()) {
            case FAINT -> 0;
            case SOFT -> 1;
            case DASHED -> 2;
            case FINE -> 3;
            case BOLD -> 4;
        };
    }
}
