package rakeline.shell.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;
import rakeline.figure.paint.Palette;

/** The program's sign, for title bars and task lists: a front wheel, and the steering axis that meets the ground before it. */
public final class Emblem {
    private static final int[] SIZES = {16, 24, 32, 48, 64, 128};

    private Emblem() {}

    /** The sign in the sizes that platforms ask for. */
    public static List<Image> all() {
        return IntStream.of(SIZES).<Image>mapToObj(Emblem::of).toList();
    }

    private static BufferedImage of(int size) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.scale(size, size);
        draw(pen);
        pen.dispose();
        return image;
    }

    /** Within a square of side 1. */
    private static void draw(Graphics2D pen) {
        pen.setColor(Palette.LIGHT.card());
        pen.fill(new Ellipse2D.Double(0.07, 0.17, 0.74, 0.74));
        line(pen, 0.09, Palette.LIGHT.ink());
        pen.draw(new Ellipse2D.Double(0.07, 0.17, 0.74, 0.74));
        line(pen, 0.1, Palette.LIGHT.accent());
        pen.draw(new Line2D.Double(0.27, 0.06, 0.63, 0.94));
        line(pen, 0.06, Palette.LIGHT.ink());
        pen.draw(new Line2D.Double(0.03, 0.94, 0.97, 0.94));
    }

    private static void line(Graphics2D pen, double width, Color colour) {
        pen.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.setColor(colour);
    }
}
