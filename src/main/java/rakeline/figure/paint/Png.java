package rakeline.figure.paint;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import rakeline.figure.Figure;

/** A figure as pixels, on the palette's card. */
public final class Png {
    private Png() {}

    /**
     * The figure as a PNG file.
     *
     * @param width in px at scale 1
     * @param scale pixels for each px, as 2 for a sharp print
     */
    public static byte[] write(Figure figure, int width, double scale, Palette palette) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            if (!ImageIO.write(image(figure, width, scale, palette), "png", out)) {
                throw new IllegalStateException("This Java has no writer of PNG.");
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("The picture cannot be written.", failure);
        }
        return bytes.toByteArray();
    }

    /** The figure as an image of that width times scale. */
    public static BufferedImage image(Figure figure, int width, double scale, Palette palette) {
        FigurePainter painter = FigurePainter.of(figure, palette, scale);
        Dimension size = painter.preferredSize(Math.ceil(width * scale));
        BufferedImage image = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(palette.card());
        graphics.fillRect(0, 0, size.width, size.height);
        painter.draw(graphics, new Rectangle2D.Double(0, 0, size.width, size.height));
        graphics.dispose();
        return image;
    }
}
