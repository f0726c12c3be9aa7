package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rakeline.quantity.Numbers;

/** The stretches of a panel without a value, hatched between the steps that have one. */
record GapBands(List<Rectangle2D> bands) {
    private static final String NAME = "no value";
    private static final double HATCH = 12;
    private static final double INVISIBLE = 0.5;

    static GapBands of(Numbers values, ChartLayout layout, Rectangle2D area) {
        List<Rectangle2D> bands = new ArrayList<>();
        int from = 0;
        for (int i = 0; i <= values.size(); i++) {
            if (i == values.size() || Double.isFinite(values.at(i))) {
                addBand(bands, from, i - 1, values.size(), layout, area);
                from = i + 1;
            }
        }
        return new GapBands(List.copyOf(bands));
    }

    /** A band from the step before the first missing one to the step after the last, as far as the area goes. */
    private static void addBand(
            List<Rectangle2D> bands, int from, int to, int size, ChartLayout layout, Rectangle2D area) {
        if (from > to) {
            return;
        }
        double one = layout.stepX(Math.max(0, from - 1));
        double other = layout.stepX(Math.min(size - 1, to + 1));
        double left = Math.max(area.getX(), Math.min(one, other));
        double right = Math.min(area.getMaxX(), Math.max(one, other));
        if (right - left > INVISIBLE) {
            bands.add(new Rectangle2D.Double(left, area.getY(), right - left, area.getHeight()));
        }
    }

    /** Draws the bands, and says what they are in those boxes. */
    void draw(Graphics2D pen, Palette palette, List<Rectangle2D> names) {
        bands.forEach(band -> drawBand(pen, palette, band));
        for (Rectangle2D box : names) {
            pen.setColor(palette.wash());
            pen.fill(box);
            Lettering.SMALL.drawCentred(pen, palette.soft(), NAME, box.getCenterX(), box.getY());
        }
    }

    /** Lines through the bands, for words that should keep off them. */
    Stream<Line2D> diagonals() {
        return bands.stream()
                .flatMap(band -> Stream.of(
                        new Line2D.Double(band.getX(), band.getY(), band.getMaxX(), band.getMaxY()),
                        new Line2D.Double(band.getX(), band.getMaxY(), band.getMaxX(), band.getY())));
    }

    /** A box for the word in each band that is wide enough. */
    List<Rectangle2D> names(Placer placer) {
        return bands.stream()
                .flatMap(band -> placer.place(places(band)).stream())
                .toList();
    }

    private static List<Rectangle2D> places(Rectangle2D band) {
        double width = Lettering.SMALL.width(NAME) + 8;
        double height = Lettering.SMALL.lineHeight();
        if (width > band.getWidth()) {
            return List.of();
        }
        List<Rectangle2D> places = new ArrayList<>();
        for (double share : new double[] {0.5, 0.25, 0.75, 0.1, 0.9}) {
            places.add(new Rectangle2D.Double(
                    band.getCenterX() - width / 2, band.getY() + share * (band.getHeight() - height), width, height));
        }
        return places;
    }

    private static void drawBand(Graphics2D pen, Palette palette, Rectangle2D band) {
        pen.setColor(palette.wash());
        pen.fill(band);
        Graphics2D own = (Graphics2D) pen.create();
        own.clip(band);
        own.setColor(palette.faint());
        own.setStroke(new BasicStroke(1));
        double height = band.getHeight();
        for (double x = band.getX() - height; x < band.getMaxX(); x += HATCH) {
            own.draw(new Line2D.Double(x, band.getMaxY(), x + height, band.getY()));
        }
        own.dispose();
    }
}
