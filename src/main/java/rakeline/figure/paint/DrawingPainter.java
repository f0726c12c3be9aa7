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
    private static final double NARROWEST = 150;
    private static final double TALLEST = 0.9;

    /** The height, in widths, of a sheet that is never too low. */
    private static final double ENDLESS = 4;

    private static final int ROUNDS = 6;
    private static final int FITS = 12;

    /** In px; a narrower sheet leaves out the dimensions in faint ink, whose numbers stand in the table. */
    private static final double ROOMY = 640;

    private final Drawing drawing;
    private final Drawing brief;
    private final Assignment assignment;
    private final LayerKey key;

    DrawingPainter(Drawing drawing, Palette palette, double scale, Assignment assignment) {
        super(drawing, palette, scale);
        this.drawing = drawing;
        this.brief = drawing.brief();
        this.assignment = assignment;
        this.key = new LayerKey(drawing.layers(), palette);
    }

    private Drawing shown(double width) {
        return width < ROOMY ? brief : drawing;
    }

    /** As wide as it may be, and as high as it then is with the words around it. */
    @Override
    double bodyHeight(double width) {
        Rectangle2D endless = new Rectangle2D.Double(0, 0, width, ENDLESS * width);
        Laid laid = Laid.of(shown(width), roomy(shown(width), endless));
        Rectangle2D drawn =
                DrawnWords.firstPlaces(laid.drawing(), laid.placement()).reduce(laid.px(), Rectangle2D::createUnion);
        return key.height(width) + Math.min(TALLEST * width, Math.max(LOWEST, drawn.getHeight() + 2 * MARGIN));
    }

    @Override
    double narrowest() {
        return NARROWEST;
    }

    @Override
    double leastBodyHeight(double width) {
        return Math.min(LOWEST, TALLEST * width);
    }

    @Override
    List<String> notes(double width) {
        return List.of();
    }

    @Override
    void paintBody(Graphics2D pen, Rectangle2D area) {
        double above = key.height(area.getWidth());
        key.draw(pen, area);
        paintMarks(
                pen,
                new Rectangle2D.Double(
                        area.getX(), area.getY() + above, area.getWidth(), Math.max(1, area.getHeight() - above)));
    }

    private void paintMarks(Graphics2D pen, Rectangle2D body) {
        Sheet sheet = fitted(shown(body.getWidth()), body);
        MarkPainter painter = new MarkPainter(sheet.placement(), palette(), assignment);
        sheet.drawing().marks().stream()
                .filter(mark -> !(mark instanceof Label))
                .sorted(Comparator.comparing(DrawingPainter::isReference).thenComparing(DrawingPainter::layer))
                .forEach(mark -> painter.draw(pen, mark));
        sheet.words().words().forEach(word -> word.draw(pen, palette()));
    }

    /** Its handles, and the ends of its dimensions that lie away from the bottom bracket, as drawn in an area. */
    public List<Grip> grips(Rectangle2D area) {
        Frame frame = frame(area);
        Drawing shown = shown(frame.body().getWidth());
        double above = key.height(frame.body().getWidth());
        Rectangle2D body = new Rectangle2D.Double(
                frame.body().getX(),
                frame.body().getY() + above,
                frame.body().getWidth(),
                Math.max(1, frame.body().getHeight() - above));
        Sheet sheet = fitted(shown, body);
        Gripped gripped = new Gripped(sheet.placement(), frame.scale(), area);
        return sheet.drawing().marks().stream()
                .flatMap(mark -> gripped.of(mark).stream())
                .toList();
    }

    private record Sheet(Drawing drawing, Placement placement, DrawnWords words) {
        int count() {
            return words.words().size();
        }
    }

    /**
     * Leaves room for dimensions outside, then shrinks the drawing until every word finds a place; where some find none
     * in any size, the largest that has as many as can be.
     */
    private static Sheet fitted(Drawing drawing, Rectangle2D body) {
        long wanted = DrawnWords.count(drawing);
        Rectangle2D area = roomy(drawing, body);
        Sheet best = sheet(drawing, area, body);
        for (int i = 0; i < FITS && best.count() < wanted; i++) {
            area = inset(area, 0.03 * Math.min(body.getWidth(), body.getHeight()));
            Sheet smaller = sheet(drawing, area, body);
            best = smaller.count() > best.count() ? smaller : best;
        }
        return best;
    }

    /** The part of a sheet that leaves room for words around what is drawn in it. */
    private static Rectangle2D roomy(Drawing drawing, Rectangle2D sheet) {
        Rectangle2D area = inset(sheet, MARGIN);
        for (int i = 0; i < ROUNDS; i++) {
            area = withRoomOutside(Laid.of(drawing, area), area, sheet);
        }
        return area;
    }

    private static Sheet sheet(Drawing drawing, Rectangle2D area, Rectangle2D body) {
        Laid laid = Laid.of(drawing, area);
        return new Sheet(laid.drawing(), laid.placement(), DrawnWords.placed(laid.drawing(), laid.placement(), body));
    }

    /** A drawing as large as an area lets it be, its dimensions as far apart as that scale asks for. */
    private record Laid(Drawing drawing, Placement placement) {
        /** What it covers on the sheet, its words aside. */
        Rectangle2D px() {
            return placement
                    .toPx()
                    .createTransformedShape(Outline.bounds(drawing))
                    .getBounds2D();
        }

        static Laid of(Drawing drawing, Rectangle2D area) {
            Placement rough = Placement.fitting(Outline.bounds(drawing), area);
            Drawing spread = Spread.at(rough.pxPerMm(), drawing);
            Placement finer = Placement.fitting(Outline.bounds(spread), area);
            Drawing apart = Spread.at(finer.pxPerMm(), drawing);
            return new Laid(apart, Placement.fitting(Outline.bounds(apart), area));
        }
    }

    /** The area, smaller on each side by what words in their first places would stand out from the body there. */
    private static Rectangle2D withRoomOutside(Laid laid, Rectangle2D area, Rectangle2D body) {
        Rectangle2D reach = DrawnWords.firstPlaces(laid.drawing(), laid.placement())
                .reduce(Rectangle2D::createUnion)
                .orElse(area);
        Rectangle2D sheet = inset(body, 1);
        double left = Math.max(0, sheet.getX() - reach.getX());
        double top = Math.max(0, sheet.getY() - reach.getY());
        double right = Math.max(0, reach.getMaxX() - sheet.getMaxX());
        double bottom = Math.max(0, reach.getMaxY() - sheet.getMaxY());
        return new Rectangle2D.Double(
                area.getX() + left,
                area.getY() + top,
                Math.max(1, area.getWidth() - left - right),
                Math.max(1, area.getHeight() - top - bottom));
    }

    private static Rectangle2D inset(Rectangle2D area, double by) {
        return new Rectangle2D.Double(
                area.getX() + by,
                area.getY() + by,
                Math.max(1, area.getWidth() - 2 * by),
                Math.max(1, area.getHeight() - 2 * by));
    }

    /** Dimensions and the bicycle itself are drawn over what is laid beside it. */
    private static boolean isReference(Mark mark) {
        return mark instanceof Dimension || mark.overlay() == 0;
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
