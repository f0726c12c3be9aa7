package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.figure.Chart;
import rakeline.figure.paint.ChartLayout.PanelLayout;
import rakeline.quantity.Limit;

/** Thin lines at a measure's limits, each with its name and source where the panel has room for them. */
record LimitLines(List<Limit> limits, PanelLayout layout, double sheetWidth, Palette palette) {
    private static final double WIDE = 560;
    private static final int FEW = 2;
    private static final int MOST_LINES = 3;
    private static final double INSET = 6;

    /** The most that words with a source take of a chart's width. */
    private static final double SHORT = 0.45;

    /** Along a line, an even number. */
    private static final int PLACES = 16;

    /** The limits that a chart of that width has no room to name in full in its panels. */
    static Stream<LimitNotes.Limited> unnamed(Chart chart, double width) {
        Steps steps = Steps.of(chart, View.WHOLE);
        return chart.panels().stream()
                .flatMap(panel -> PanelRange.of(panel, steps, chart.here()).stream()
                        .map(range -> PanelRange.limitsIn(panel.quantity(), range))
                        .filter(limits -> !haveRoom(limits, width))
                        .flatMap(List::stream)
                        .map(limit -> new LimitNotes.Limited(panel.quantity(), limit)));
    }

    /** Whether the panel names them with their sources: it is wide, they are few, and none takes half of it. */
    private static boolean haveRoom(List<Limit> limits, double width) {
        return width >= WIDE
                && limits.size() <= FEW
                && limits.stream().allMatch(limit -> Lettering.SMALL.width(inFull(limit)) < SHORT * width);
    }

    private static String inFull(Limit limit) {
        return limit.source().isBlank() ? limit.label() : limit.label() + " · " + limit.source();
    }

    void draw(Graphics2D pen, Placer placer) {
        lines().forEach(line -> drawLine(pen, line));
        limits.forEach(limit -> drawName(pen, placer, limit));
    }

    List<Line2D> lines() {
        Rectangle2D area = layout.area();
        return limits.stream()
                .map(limit -> ChartAxes.crisp(layout.toY(limit.value())))
                .<Line2D>map(y -> new Line2D.Double(area.getX(), y, area.getMaxX(), y))
                .toList();
    }

    private void drawLine(Graphics2D pen, Line2D line) {
        drawLine(pen, line, palette);
    }

    /** Thin and dotted. */
    static void drawLine(Graphics2D pen, Line2D line, Palette palette) {
        pen.setColor(palette.caution());
        pen.setStroke(new BasicStroke(palette.line(1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dots(), 0));
        pen.draw(line);
    }

    private static float[] dots() {
        return new float[] {2, 2};
    }

    /** In a place that is clear of the curve if there is one, in one line or in several; else the curve is broken. */
    private void drawName(Graphics2D pen, Placer placer, Limit limit) {
        double y = layout.toY(limit.value());
        List<String> wide = lines(words(limit), Double.POSITIVE_INFINITY);
        List<String> narrow = lines(words(limit), 0.6 * Lettering.SMALL.width(words(limit)));
        List<String> name = lines(limit.label(), Double.POSITIVE_INFINITY);
        if (!drawn(pen, wide, placer.placeClear(boxes(wide, y)))
                && !drawn(pen, narrow, placer.placeClear(boxes(narrow, y)))
                && !drawnOver(pen, wide, placer.place(boxes(wide, y)))) {
            drawnOver(pen, name, placer.place(boxes(name, y)));
        }
    }

    private String words(Limit limit) {
        return haveRoom(limits, sheetWidth) ? inFull(limit) : limit.label();
    }

    private boolean drawnOver(Graphics2D pen, List<String> lines, Optional<Rectangle2D> place) {
        place.ifPresent(box -> {
            pen.setColor(palette.card());
            pen.fill(box);
        });
        return drawn(pen, lines, place);
    }

    private List<String> lines(String words, double width) {
        return Lettering.SMALL.lines(words, Math.min(width, layout.area().getWidth() - 2 * INSET), MOST_LINES);
    }

    private boolean drawn(Graphics2D pen, List<String> lines, Optional<Rectangle2D> place) {
        place.ifPresent(box -> Lettering.SMALL.draw(pen, palette.caution(), lines, box.getX(), box.getY()));
        return place.isPresent();
    }

    /** Just above the line or below it, then further off; from the left to the right. */
    private List<Rectangle2D> boxes(List<String> lines, double y) {
        double width = Lettering.SMALL.width(lines);
        double height = Lettering.SMALL.height(lines);
        double room = layout.area().getWidth() - width - 2 * INSET;
        List<Rectangle2D> boxes = new ArrayList<>();
        for (double top : new double[] {y - height - 3, y + 4, y - 1.6 * height, y + 0.7 * height}) {
            for (int place = 0; place <= PLACES; place++) {
                double left = layout.area().getX() + INSET + share(place) * room;
                boxes.add(new Rectangle2D.Double(left, top, width, height));
            }
        }
        return boxes;
    }

    /** From both ends of the line toward its middle. */
    private static double share(int place) {
        int pair = place / 2;
        double in = (double) pair / PLACES;
        return place % 2 == 0 ? in : 1 - in;
    }
}
