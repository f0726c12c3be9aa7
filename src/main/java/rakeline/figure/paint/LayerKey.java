package rakeline.figure.paint;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Which line of a drawing belongs to which bike, in a row above it; nothing where there is only one. */
record LayerKey(List<String> names, Palette palette) {
    private static final Lettering WORDS = Lettering.SMALL;
    private static final double SAMPLE = 26;
    private static final double GAP = 6;
    private static final double APART = 22;
    private static final double BELOW = 6;

    LayerKey {
        names = names.size() > 1 ? List.copyOf(names) : List.of();
    }

    double height(double width) {
        return names.isEmpty() ? 0 : lines(width) * WORDS.lineHeight() + BELOW;
    }

    private int lines(double width) {
        int lines = 1;
        double x = 0;
        for (String name : names) {
            if (x > 0 && x + entry(name) > width) {
                lines++;
                x = 0;
            }
            x += entry(name) + APART;
        }
        return lines;
    }

    void draw(Graphics2D pen, Rectangle2D area) {
        double x = area.getX();
        double y = area.getY();
        for (int layer = 0; layer < names.size(); layer++) {
            String name = names.get(layer);
            if (x > area.getX() && x + entry(name) > area.getMaxX()) {
                x = area.getX();
                y += WORDS.lineHeight();
            }
            draw(pen, layer, name, x, y);
            x += entry(name) + APART;
        }
    }

    private void draw(Graphics2D pen, int layer, String name, double x, double y) {
        double middle = y + WORDS.lineHeight() / 2;
        pen.setColor(LayerStyle.colour(palette, layer, palette.ink()));
        pen.setStroke(LayerStyle.stroke(palette, layer, 2.4));
        pen.draw(new Line2D.Double(x, middle, x + SAMPLE, middle));
        WORDS.draw(pen, palette.ink(), name, x + SAMPLE + GAP, y);
    }

    private static double entry(String name) {
        return SAMPLE + GAP + WORDS.width(name);
    }
}
