package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** How one measure is drawn wherever it appears: colour, dash and marker, so that it reads in grey as well. */
public record SeriesStyle(Color colour, Dash dash, Marker marker) {

    /** The line's rhythm. */
    public enum Dash {
        SOLID,
        LONG,
        SHORT,
        MIXED;

        /** A stroke of that width, in px. */
        public BasicStroke stroke(float width) {
            return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, rhythm(), 0);
        }

        /** Drawn and left out in turn, in px; null for an unbroken line, as {@link BasicStroke} has it. */
        private float[] rhythm() {
            return switch (this) {
                case SOLID -> null;
                case LONG -> new float[] {7, 4};
                case SHORT -> new float[] {2, 3};
                case MIXED -> new float[] {9, 3, 2, 3};
            };
        }
    }

    /** The shape that marks a point of the curve. */
    public enum Marker {
        DISC,
        SQUARE,
        DIAMOND,
        TRIANGLE;

        /** Its outline about a point, in px. */
        public Shape at(double x, double y, double radius) {
            return switch (this) {
                case DISC -> new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
                case SQUARE -> new Rectangle2D.Double(x - 0.9 * radius, y - 0.9 * radius, 1.8 * radius, 1.8 * radius);
                case DIAMOND -> polygon(x, y, 1.2 * radius, 4);
                case TRIANGLE -> polygon(x, y, 1.25 * radius, 3);
            };
        }

        private static Shape polygon(double x, double y, double radius, int corners) {
            Path2D.Double path = new Path2D.Double();
            path.moveTo(x, y - radius);
            for (int i = 1; i < corners; i++) {
                double turn = 2 * Math.PI * i / corners;
                path.lineTo(x + radius * Math.sin(turn), y - radius * Math.cos(turn));
            }
            path.closePath();
            return path;
        }
    }

    /** A stroke with this dash. */
    public BasicStroke stroke(float width) {
        return dash.stroke(width);
    }
}
