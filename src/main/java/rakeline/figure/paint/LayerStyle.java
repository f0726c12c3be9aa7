package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Color;

/** How what is laid over the first bike of a drawing is told apart from it: by colour, and in grey by its dashes. */
final class LayerStyle {
    private LayerStyle() {}

    /** The colour of a layer; the first keeps its own. */
    static Color colour(Palette palette, int layer, Color own) {
        return layer == 0 ? own : palette.style(layer).colour();
    }

    /** The line of a layer, so wide at the palette's usual weight. */
    static BasicStroke stroke(Palette palette, int layer, double width) {
        return layer == 0
                ? new BasicStroke(palette.line(width), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                : palette.style(layer).stroke(palette.line(width));
    }
}
