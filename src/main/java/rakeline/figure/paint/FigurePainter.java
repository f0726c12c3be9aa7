package rakeline.figure.paint;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import rakeline.figure.Chart;
import rakeline.figure.Drawing;
import rakeline.figure.Figure;
import rakeline.figure.MapFigure;
import rakeline.figure.Table;

/**
 * Draws one figure in an area of any graphics context, without a background of its own. Text, lines and distances grow
 * with the scale. Where an area is too small for the figure at its scale, the whole is drawn smaller; nothing is cut.
 */
public abstract sealed class FigurePainter permits ChartPainter, TablePainter, DrawingPainter, MapPainter {
    private static final double MARGIN = 8;
    private static final double NARROWEST = 320;
    private static final double SMALLEST = 0.1;

    private final Palette palette;
    private final double scale;
    private final Figure figure;

    FigurePainter(Figure figure, Palette palette, double scale) {
        this.figure = figure;
        this.palette = palette;
        this.scale = scale;
    }

    /**
     * The painter of a figure, with the series that every page begins with.
     *
     * @param scale 1 for text of 12 px
     */
    public static FigurePainter of(Figure figure, Palette palette, double scale) {
        return of(figure, palette, scale, Assignment.STANDARD);
    }

    /** The painter of a figure on a page that has its own assignment of series. */
    public static FigurePainter of(Figure figure, Palette palette, double scale, Assignment assignment) {
        if (figure instanceof Chart chart) {
            return new ChartPainter(chart, palette, scale, assignment);
        }
        if (figure instanceof Drawing drawing) {
            return new DrawingPainter(drawing, palette, scale, assignment);
        }
        if (figure instanceof MapFigure map) {
            return new MapPainter(map, palette, scale);
        }
        return new TablePainter((Table) figure, palette, scale, assignment, TablePainter.MOST_ROWS);
    }

    /** The width given and the height that the figure wants at it, in px. */
    public final Dimension preferredSize(double width) {
        double laidOut = Math.max(narrowest(), width / scale);
        double shrink = Math.min(1, width / scale / laidOut);
        double height = aroundBody(laidOut) + bodyHeight(innerWidth(width));
        return new Dimension((int) Math.ceil(width), (int) Math.ceil(height * scale * shrink));
    }

    /** The width of the body in a picture of a width, in px, before it is scaled. */
    final double innerWidth(double width) {
        return Math.max(narrowest(), width / scale) - 2 * MARGIN;
    }

    /** Draws the figure into the area. */
    public void draw(Graphics2D graphics, Rectangle2D area) {
        drawAround(graphics, area, this::paintBody);
    }

    /** The height that the body wants, without title and words beneath. */
    abstract double bodyHeight(double width);

    /** The least width in which letters keep their size. */
    double narrowest() {
        return NARROWEST;
    }

    /** The least height in which the body is complete. */
    double leastBodyHeight(double width) {
        return bodyHeight(width);
    }

    /** What stands beneath the figure besides what was held and the cautions. */
    abstract List<String> notes(double width);

    abstract void paintBody(Graphics2D pen, Rectangle2D body);

    final Palette palette() {
        return palette;
    }

    /** Draws title and words beneath, and lets the body be drawn between them. */
    final void drawAround(Graphics2D graphics, Rectangle2D area, BiConsumer<Graphics2D, Rectangle2D> body) {
        Frame frame = frame(area);
        Graphics2D pen = (Graphics2D) graphics.create();
        setHints(pen);
        pen.translate(area.getX(), area.getY());
        pen.scale(frame.scale(), frame.scale());
        double width = frame.width() - 2 * MARGIN;
        Caption caption = caption(width);
        caption.drawHead(pen, palette, MARGIN, MARGIN, width);
        body.accept(pen, frame.body());
        caption.drawFoot(pen, palette, MARGIN, frame.body().getMaxY(), width);
        pen.dispose();
    }

    /** How the figure lies in an area: at which scale it is drawn, and where its body is before that scale. */
    record Frame(double scale, double width, Rectangle2D body) {}

    final Frame frame(Rectangle2D area) {
        double fitting = scale;
        while (fitting > SMALLEST * scale && isTooSmall(area.getWidth() / fitting, area.getHeight() / fitting)) {
            fitting *= 0.96;
        }
        double width = area.getWidth() / fitting;
        double inner = width - 2 * MARGIN;
        double top = MARGIN + caption(inner).headHeight(inner);
        double height = area.getHeight() / fitting - aroundBody(width);
        return new Frame(fitting, width, new Rectangle2D.Double(MARGIN, top, inner, Math.max(1, height)));
    }

    /** The scale at which it is drawn in an area of that size: its own, or less where it does not fit. */
    public final double scaleIn(double width, double height) {
        return frame(new Rectangle2D.Double(0, 0, width, height)).scale();
    }

    /** Where the words say what was held, as drawn in an area; empty where nothing is said. */
    public final Rectangle2D heldArea(Rectangle2D area) {
        Frame frame = frame(area);
        double inner = frame.width() - 2 * MARGIN;
        double scaled = frame.scale();
        return new Rectangle2D.Double(
                area.getX() + scaled * MARGIN,
                area.getY() + scaled * frame.body().getMaxY(),
                scaled * inner,
                scaled * caption(inner).heldHeight(inner));
    }

    /** Where the cautions stand, as drawn in an area; empty where there are none. */
    public final Rectangle2D cautionsArea(Rectangle2D area) {
        Frame frame = frame(area);
        double inner = frame.width() - 2 * MARGIN;
        double high = caption(inner).cautionsHeight(inner);
        double scaled = frame.scale();
        return new Rectangle2D.Double(
                area.getX() + scaled * MARGIN,
                area.getY() + area.getHeight() - scaled * (MARGIN + high),
                scaled * inner,
                scaled * high);
    }

    private boolean isTooSmall(double width, double height) {
        return width < narrowest() || height + 1 < aroundBody(width) + leastBodyHeight(width - 2 * MARGIN);
    }

    private double aroundBody(double width) {
        double inner = width - 2 * MARGIN;
        Caption caption = caption(inner);
        return 2 * MARGIN + caption.headHeight(inner) + caption.footHeight(inner);
    }

    private Caption caption(double width) {
        List<String> notes = new ArrayList<>(notes(width));
        notes.add(0, figure.basis().words());
        return new Caption(heading(figure), figure.held(), notes, figure.cautions());
    }

    private static String heading(Figure figure) {
        return figure instanceof Drawing drawing ? heading(drawing) : figure.title();
    }

    private static String heading(Drawing drawing) {
        return drawing.kind().isBlank() || drawing.title().isBlank()
                ? drawing.kind()
                : drawing.kind() + ": " + drawing.title();
    }

    private static void setHints(Graphics2D pen) {
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }
}
