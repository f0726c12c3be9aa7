package rakeline.figure.paint;

import java.awt.Graphics;
import java.awt.geom.Rectangle2D;
import org.apache.batik.svggen.DOMGroupManager;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Element;

/**
 * Draws into an SVG document with each text as one element that states its length, so that a reader with other
 * typefaces still keeps it in the room that it was given.
 */
final class SvgText extends SVGGraphics2D {
    private static final String XML = "http://www.w3.org/XML/1998/namespace";

    SvgText(SVGGeneratorContext context) {
        super(context, false);
    }

    private SvgText(SvgText parent) {
        super(parent);
    }

    @Override
    public Graphics create() {
        return new SvgText(this);
    }

    @Override
    public void drawString(String words, float x, float y) {
        Element text = getDOMFactory().createElementNS(SVG_NAMESPACE_URI, SVG_TEXT_TAG);
        text.setAttributeNS(null, SVG_X_ATTRIBUTE, getGeneratorContext().doubleString(x));
        text.setAttributeNS(null, SVG_Y_ATTRIBUTE, getGeneratorContext().doubleString(y));
        text.setAttributeNS(XML, "xml:space", "preserve");
        Rectangle2D bounds = getFont().getStringBounds(words, getFontRenderContext());
        text.setAttributeNS(null, "textLength", getGeneratorContext().doubleString(bounds.getWidth()));
        text.setAttributeNS(null, "lengthAdjust", "spacingAndGlyphs");
        text.appendChild(getDOMFactory().createTextNode(words));
        domGroupManager.addElement(text, DOMGroupManager.FILL);
    }
}
