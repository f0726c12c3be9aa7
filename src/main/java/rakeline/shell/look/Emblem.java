package rakeline.shell.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;
import rakeline.figure.paint.Palette;

/** The program's sign, for title bars and task lists: a fork that rakes forward to its axle, and the tyre under it. */
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

    /** Within a square of side 1: a tile of its own, so that it is seen on light and dark alike. */
    private static void draw(Graphics2D pen) {
        pen.setColor(Palette.LIGHT.accent());
        pen.fill(new RoundRectangle2D.Double(0, 0, 1, 1, 0.3, 0.3));
        line(pen, 0.12, Palette.LIGHT.paper());
        pen.draw(new Arc2D.Double(0.26, 0.24, 0.6, 0.6, -165, 195, Arc2D.OPEN));
        Path2D fork = new Path2D.Double();
        fork.moveTo(0.22, 0.12);
        fork.lineTo(0.35, 0.36);
        fork.quadTo(0.41, 0.47, 0.56, 0.54);
        line(pen, 0.13, Palette.DARK.caution());
        pen.draw(fork);
    }

    private static void line(Graphics2D pen, double width, Color colour) {
        pen.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.setColor(colour);
    }
}
