package rakeline.figure;

import java.util.List;
import java.util.Optional;
import rakeline.quantity.Caution;
import rakeline.quantity.Quantity;

/**
 * A drawing to scale, in millimetres, x to the right and y up.
 *
 * @param kind what is drawn, for a heading: {@code Side view}; empty for none over it
 * @param columns the numbers that it shows
 */
public record Drawing(
        String kind,
        String title,
        List<Mark> marks,
        List<Column> columns,
        String held,
        List<Caution> cautions,
        Basis basis)
        implements Figure {
    /** About no bicycle in particular. */
    public Drawing(
            String kind, String title, List<Mark> marks, List<Column> columns, String held, List<Caution> cautions) {
        this(kind, title, marks, columns, held, cautions, Basis.NONE);
    }

    /** How a mark is inked. */
    public enum Ink {
        /** The bicycle itself. */
        BOLD,
        /** Its lesser parts. */
        FINE,
        /** Ground, centre lines. */
        FAINT,
        /** A body: shoe, rider. */
        SOFT,
        /** A construction line: the steering axis. */
        DASHED
    }

    /** One thing on the sheet; {@code overlay} 0 is the bicycle itself, 1 and up are others laid over it. */
    public sealed interface Mark {
        Ink ink();

        int overlay();
    }

    public record Point(double x, double y) {}

    /** A line through points; closed and filled where asked. */
    public record Path(List<Point> points, boolean closed, boolean filled, Ink ink, int overlay) implements Mark {
        public Path {
            points = List.copyOf(points);
        }
    }

    public record Circle(Point centre, double radius, boolean filled, Ink ink, int overlay) implements Mark {}

    /** A dimension between two points, its line offset at right angles to them by so many millimetres (left of from→to). */
    public record Dimension(Point from, Point to, double offset, String text, String key, Ink ink, int overlay)
            implements Mark {
        /** The same, its line elsewhere. */
        public Dimension offsetBy(double newOffset) {
            return new Dimension(from, to, newOffset, text, key, ink, overlay);
        }
    }

    /** Words at a point, centred under it. */
    public record Label(Point at, String text, Ink ink, int overlay) implements Mark {}

    /**
     * A place where an input can be taken hold of; it is not drawn where nothing can move it.
     *
     * @param value of the input, in its unit
     * @param perMmX how the input grows when the place goes a millimetre to the right
     * @param perMmY how it grows when the place goes a millimetre up
     */
    public record Handle(Point at, String key, String label, double value, double perMmX, double perMmY, int overlay)
            implements Mark {
        private static final double STILL = 1e-6;

        /**
         * At a place that moves with an input; the input follows what of a move lies along the way that the place takes.
         *
         * @param next where the place is when the input is larger by {@code step}
         * @return empty where the place does not move
         */
        static Optional<Handle> moving(Quantity input, double value, Point at, Point next, double step, int overlay) {
            double dx = (next.x() - at.x()) / step;
            double dy = (next.y() - at.y()) / step;
            double square = dx * dx + dy * dy;
            return Math.sqrt(square) < STILL
                    ? Optional.empty()
                    : Optional.of(new Handle(at, input.key(), input.label(), value, dx / square, dy / square, overlay));
        }

        @Override
        public Ink ink() {
            return Ink.FINE;
        }
    }

    /** The key of the column that names the bikes that are laid over each other. */
    public static final String LAYER = "bike";

    public Drawing {
        marks = List.copyOf(marks);
        columns = List.copyOf(columns);
        cautions = List.copyOf(cautions);
    }

    @Override
    public Drawing withCautions(List<Caution> others) {
        return new Drawing(kind, title, marks, columns, held, others, basis);
    }

    /** The same without the dimensions in faint ink, whose numbers stand elsewhere. */
    public Drawing brief() {
        List<Mark> most = marks.stream()
                .filter(mark -> !(mark instanceof Dimension && mark.ink() == Ink.FAINT))
                .toList();
        return withMarks(most);
    }

    /** The same with other marks. */
    public Drawing withMarks(List<Mark> others) {
        return new Drawing(kind, title, others, columns, held, cautions, basis);
    }

    /** The same, about these bicycles. */
    public Drawing about(Basis other) {
        return new Drawing(kind, title, marks, columns, held, cautions, other);
    }

    /** The names of the bikes, in the order of their overlay; empty where they are not named. */
    public List<String> layers() {
        return columns.stream()
                .filter(column -> column.key().equals(LAYER))
                .findFirst()
                .map(Column::shown)
                .orElse(List.of());
    }
}
