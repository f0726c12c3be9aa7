package rakeline.shell.show;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import rakeline.figure.Chart;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.figure.paint.FigurePainter;
import rakeline.shell.look.Look;

/**
 * Divides a figure into parts that fit an area with type as large as the look has it: a chart by its panels, a table by
 * its rows.
 *
 * @param width of the area, in pixels
 * @param height of the area, in pixels
 */
record Parts(Look look, int width, int height) {
    List<Figure> of(Figure figure) {
        if (figure instanceof Chart chart) {
            int all = chart.panels().size();
            return cut(
                    all,
                    most(all, n -> fits(Sliced.panels(chart, 0, n))),
                    (from, to) -> Sliced.panels(chart, from, to));
        }
        if (figure instanceof Table table) {
            int all = table.rows();
            return cut(all, most(all, n -> fits(Sliced.rows(table, 0, n))), (from, to) -> Sliced.rows(table, from, to));
        }
        return List.of(Sliced.bare(figure));
    }

    private interface Cut {
        Figure part(int from, int to);
    }

    /** Into as few parts as it takes, and those as alike in size as they can be. */
    private static List<Figure> cut(int all, int most, Cut cut) {
        int parts = Math.max(1, (all + most - 1) / most);
        return IntStream.range(0, parts)
                .mapToObj(i -> cut.part(i * all / parts, (i + 1) * all / parts))
                .toList();
    }

    /** The largest number that fits; at least one, whether it fits or not. */
    private static int most(int all, IntPredicate fits) {
        int least = 1;
        int most = Math.max(1, all);
        while (least < most) {
            int middle = (least + most + 1) / 2;
            least = fits.test(middle) ? middle : least;
            most = fits.test(middle) ? most : middle - 1;
        }
        return least;
    }

    private boolean fits(Figure part) {
        return FigurePainter.of(part, look.palette(), look.scale()).preferredSize(width).height <= height;
    }
}
