package rakeline.figure.paint;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.LineMetrics;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/** A graphics context that draws nothing and remembers each text with its box, and the boxes of all shapes. */
final class TextRecorder extends AbstractGraphics2D {
    private static final FontRenderContext MEASURED = new FontRenderContext(null, true, true);

    /** One text as drawn, with its box on the outermost sheet. */
    record Text(String words, Rectangle2D box, boolean isUpright) {}

    private final List<Text> texts;
    private final List<Rectangle2D> shapes;

    TextRecorder() {
        super(false);
        gc = new GraphicContext();
        texts = new ArrayList<>();
        shapes = new ArrayList<>();
    }

    private TextRecorder(TextRecorder parent) {
        super(parent);
        texts = parent.texts;
        shapes = parent.shapes;
    }

    List<Text> texts() {
        return List.copyOf(texts);
    }

    List<String> words() {
        return texts.stream().map(Text::words).toList();
    }

    /** The boxes of all that was drawn, as far as it was not clipped away. */
    List<Rectangle2D> shapes() {
        return List.copyOf(shapes);
    }

    @Override
    public Graphics create() {
        return new TextRecorder(this);
    }

    @Override
    public void drawString(String words, float x, float y) {
        Font font = getFont();
        LineMetrics line = font.getLineMetrics(words, MEASURED);
        double width = font.getStringBounds(words, MEASURED).getWidth();
        Rectangle2D box = new Rectangle2D.Double(
                x, y - 0.75 * line.getAscent(), width, 0.75 * line.getAscent() + line.getDescent());
        AffineTransform now = getTransform();
        boolean upright = now.getScaleX() > 0 && now.getScaleY() > 0 && now.getShearX() == 0 && now.getShearY() == 0;
        texts.add(new Text(words, now.createTransformedShape(box).getBounds2D(), upright));
    }

    @Override
    public void draw(Shape shape) {
        remember(getStroke().createStrokedShape(shape));
    }

    @Override
    public void fill(Shape shape) {
        remember(shape);
    }

    private void remember(Shape shape) {
        Rectangle2D box = shape.getBounds2D();
        Rectangle2D seen =
                getClip() == null ? box : box.createIntersection(getClip().getBounds2D());
        if (seen.getWidth() >= 0 && seen.getHeight() >= 0) {
            shapes.add(getTransform().createTransformedShape(seen).getBounds2D());
        }
    }

    @Override
    public void drawString(AttributedCharacterIterator words, float x, float y) {
        throw new UnsupportedOperationException("figures draw plain strings");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw new UnsupportedOperationException("figures draw no images");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw new UnsupportedOperationException("figures draw no images");
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform placed) {
        throw new UnsupportedOperationException("figures draw no images");
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform placed) {
        throw new UnsupportedOperationException("figures draw no images");
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw new UnsupportedOperationException("figures copy nothing");
    }

    @Override
    public void dispose() {
        // holds nothing
    }

    @Override
    public void setXORMode(Color colour) {
        throw new UnsupportedOperationException("figures have no xor");
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return null;
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        Graphics graphics = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).getGraphics();
        FontMetrics metrics = graphics.getFontMetrics(font);
        graphics.dispose();
        return metrics;
    }
}
