package rakeline.figure.paint;

import java.util.List;
import rakeline.figure.Drawing;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Mark;

/** Level dimensions moved further out where a small scale would leave no room for words between their lines. */
final class Spread {
    /** Between two lines, in px: a line of words and some air. */
    private static final double ROOM = 23;

    private static final double MOST = 4;

    /** Offsets that differ by less, in mm, are one line. */
    private static final double SAME = 1;

    private Spread() {}

    /** The same drawing with its level dimensions as far from each other as the scale asks for. */
    static Drawing at(double pxPerMm, Drawing drawing) {
        double closest = closest(drawing);
        double factor = Math.min(MOST, ROOM / Math.max(1e-9, closest * pxPerMm));
        return factor <= 1
                ? drawing
                : drawing.withMarks(drawing.marks().stream()
                        .map(mark -> moved(mark, factor))
                        .toList());
    }

    private static Mark moved(Mark mark, double factor) {
        return mark instanceof Dimension dimension && isLevel(dimension)
                ? dimension.offsetBy(factor * dimension.offset())
                : mark;
    }

    private static boolean isLevel(Dimension dimension) {
        return Math.abs(dimension.to().x() - dimension.from().x())
                > Math.abs(dimension.to().y() - dimension.from().y());
    }

    /** The least distance between two of the lines on one side; infinite where none lies beyond another. */
    private static double closest(Drawing drawing) {
        List<Double> offsets = drawing.marks().stream()
                .filter(mark -> mark instanceof Dimension dimension && isLevel(dimension))
                .map(mark -> ((Dimension) mark).offset())
                .filter(offset -> offset != 0)
                .sorted()
                .toList();
        double closest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < offsets.size(); i++) {
            double apart = offsets.get(i) - offsets.get(i - 1);
            boolean oneSide = offsets.get(i) * offsets.get(i - 1) > 0;
            closest = oneSide && apart > SAME ? Math.min(closest, apart) : closest;
        }
        return closest;
    }
}
