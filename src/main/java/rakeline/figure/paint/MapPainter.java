package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.figure.MapFigure;
import rakeline.quantity.Decimals;
import rakeline.quantity.Limit;

/**
 * Draws a map: shades of one hue from light to dark, lines between them with their values, limits dotted, gaps hatched,
 * the bike as it is as a ringed point. The lines alone say all that the shades say.
 */
final class MapPainter extends FigurePainter {
    private static final double HATCH = 9;
    private static final double POINT = 5;

    /** A line shorter than this on the sheet has no room for its value, in px. */
    private static final double LEAST_LABELLED = 50;

    private final MapFigure map;
    private final Optional<MapLevels> levels;

    MapPainter(MapFigure map, Palette palette, double scale) {
        super(map, palette, scale);
        this.map = map;
        this.levels = MapLevels.of(map);
    }

    @Override
    double bodyHeight(double width) {
        return MapLayout.heightOf(width);
    }

    @Override
    double leastBodyHeight(double width) {
        return MapLayout.heightOf(0);
    }

    @Override
    List<String> notes(double width) {
        Stream<String> limits = MapLevels.limits(map).stream().map(this::note);
        return Stream.of(outside().stream(), limits, map.gaps().stream())
                .flatMap(each -> each)
                .toList();
    }

    @Override
    void paintBody(Graphics2D pen, Rectangle2D body) {
        MapLayout layout = MapLayout.of(map, body);
        Path2D gaps = new MapCells(layout).gaps();
        if (gaps.getCurrentPoint() != null) {
            paintGaps(pen, gaps);
        }
        levels.ifPresent(some -> paintLevels(pen, layout, some, body.getMaxX()));
        new MapAxes(layout, palette()).draw(pen, body.getX());
    }

    private void paintLevels(Graphics2D pen, MapLayout layout, MapLevels some, double right) {
        paintShades(pen, layout, some);
        Placer placer = new Placer(layout.data(), List.of());
        if (layout.showsHere()) {
            placer.take(
                    new Rectangle2D.Double(hereX(layout) - 3 * POINT, hereY(layout) - 3 * POINT, 6 * POINT, 6 * POINT));
        }
        MapLevels.limits(map).forEach(limit -> paintLimit(pen, layout, placer, limit));
        some.values().forEach(level -> paintLine(pen, layout, placer, some, level));
        paintHere(pen, layout);
        new MapLegend(layout, some, palette()).draw(pen, right);
    }

    private void paintShades(Graphics2D pen, MapLayout layout, MapLevels some) {
        MapCells cells = new MapCells(layout);
        pen.setColor(some.shade(0, palette()));
        pen.fill(cells.above(Double.NEGATIVE_INFINITY));
        for (int i = 0; i < some.values().size(); i++) {
            pen.setColor(some.shade(i + 1, palette()));
            pen.fill(cells.above(some.values().get(i)));
        }
    }

    /** Slanting lines on a quiet ground. */
    private void paintGaps(Graphics2D pen, Path2D gaps) {
        Graphics2D clipped = (Graphics2D) pen.create();
        clipped.setColor(palette().wash());
        clipped.fill(gaps);
        clipped.clip(gaps);
        clipped.setColor(palette().faint());
        clipped.setStroke(new BasicStroke(palette().line(1)));
        Rectangle2D box = gaps.getBounds2D();
        double last = box.getMaxX() + box.getHeight();
        for (double x = HATCH * Math.floor(box.getX() / HATCH); x < last; x += HATCH) {
            clipped.draw(new Line2D.Double(x, box.getY(), x - box.getHeight(), box.getMaxY()));
        }
        clipped.dispose();
    }

    private void paintLine(Graphics2D pen, MapLayout layout, Placer placer, MapLevels some, double level) {
        if (map.measure().limits().stream().anyMatch(limit -> limit.value() == level)) {
            return;
        }
        List<List<Point2D>> lines = Contours.of(layout, level);
        pen.setColor(palette().ink());
        pen.setStroke(new BasicStroke(palette().line(0.9)));
        lines.forEach(line -> pen.draw(Contours.path(line)));
        paintLabel(pen, placer, lines, some.text(level, map), palette().ink());
    }

    private void paintLimit(Graphics2D pen, MapLayout layout, Placer placer, Limit limit) {
        List<List<Point2D>> lines = Contours.of(layout, limit.value());
        pen.setColor(palette().caution());
        pen.setStroke(new BasicStroke(
                palette().line(2.2), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {2, 3}, 0));
        lines.forEach(line -> pen.draw(Contours.path(line)));
        paintLabel(
                pen,
                placer,
                lines,
                valueOf(limit) + " " + limit.label(),
                palette().caution());
    }

    /** On the longest line, as near to its middle as there is room. */
    private void paintLabel(Graphics2D pen, Placer placer, List<List<Point2D>> lines, String text, Color colour) {
        lines.stream()
                .filter(line -> length(line) > LEAST_LABELLED)
                .max(Comparator.comparingDouble(MapPainter::length))
                .flatMap(line -> placer.place(boxes(line, text)))
                .ifPresent(box -> {
                    pen.setColor(palette().card());
                    pen.fill(box);
                    Lettering.SMALL.draw(pen, colour, text, box.getX() + 3, box.getY());
                });
    }

    private static List<Rectangle2D> boxes(List<Point2D> line, String text) {
        double width = Lettering.SMALL.width(text) + 6;
        double height = Lettering.SMALL.lineHeight();
        List<Rectangle2D> boxes = new ArrayList<>();
        for (double share : new double[] {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9}) {
            Point2D at = line.get((int) (share * (line.size() - 1)));
            boxes.add(new Rectangle2D.Double(at.getX() - width / 2, at.getY() - height / 2, width, height));
        }
        return boxes;
    }

    private static double length(List<Point2D> line) {
        double length = 0;
        for (int i = 1; i < line.size(); i++) {
            length += line.get(i).distance(line.get(i - 1));
        }
        return length;
    }

    private void paintHere(Graphics2D pen, MapLayout layout) {
        if (!layout.showsHere()) {
            return;
        }
        double x = hereX(layout);
        double y = hereY(layout);
        pen.setColor(palette().card());
        pen.fill(SeriesStyle.Marker.DISC.at(x, y, 2 * POINT));
        pen.setColor(palette().ink());
        pen.setStroke(new BasicStroke(palette().line(1.6)));
        pen.draw(SeriesStyle.Marker.DISC.at(x, y, 2 * POINT));
        pen.fill(SeriesStyle.Marker.DISC.at(x, y, 0.8 * POINT));
    }

    private double hereX(MapLayout layout) {
        return layout.toX(map.x().here());
    }

    private double hereY(MapLayout layout) {
        return layout.toY(map.y().here());
    }

    /** Says where the bike is if the map does not show it, and what the ring is if it does. */
    private Optional<String> outside() {
        if (!Double.isFinite(map.x().here()) || !Double.isFinite(map.y().here())) {
            return Optional.empty();
        }
        boolean shown =
                MapLayout.of(map, new Rectangle2D.Double(0, 0, 600, 400)).showsHere();
        String at = map.x().quantity().label() + " "
                + map.x().quantity().formatWithUnit(map.x().here()) + ", "
                + map.y().quantity().label() + " "
                + map.y().quantity().formatWithUnit(map.y().here());
        return Optional.of((shown ? "The ring is the bike as it is: " : "The bike as it is lies outside: ") + at + ".");
    }

    private String note(Limit limit) {
        return map.measure().label() + " " + valueOf(limit) + ", " + limit.label() + ", dotted"
                + (limit.source().isBlank() ? "." : ": " + limit.source() + ".");
    }

    private String valueOf(Limit limit) {
        return map.measure().unit().attach(Decimals.shown(limit.value()));
    }
}
