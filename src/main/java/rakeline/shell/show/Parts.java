package rakeline.shell.show;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import rakeline.figure.Chart;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.figure.paint.FigurePainter;
import rakeline.figure.paint.TablePainter;
import rakeline.shell.look.Look;

/**
 * Divides a figure into parts that fit an area with type as large as the look has it: a chart by its panels, a table by
 * its rows; a table too wide for it is turned.
 *
 * @param width of the area, in pixels
 * @param height of the area that a part has above what is said of it, in pixels
 */
record Parts(Look look, int width, ToIntFunction<Figure> height) {
    List<Figure> of(Figure figure) {
        if (figure instanceof Chart chart) {
            return cut(chart.panels().size(), (from, to) -> Sliced.panels(chart, from, to));
        }
        if (figure instanceof Table table) {
            Table laid = laid(table);
            return cut(laid.rows(), (from, to) -> Sliced.rows(laid, from, to));
        }
        return List.of(Sliced.bare(figure));
    }

    private interface Cut {
        Figure part(int from, int to);
    }

    /** Into as few parts as it takes, and those as alike in size as they can be. */
    private List<Figure> cut(int all, Cut cut) {
        List<Figure> full = new ArrayList<>();
        int from = 0;
        do {
            int start = from;
            from += most(all - start, n -> fits(cut.part(start, start + n)));
            full.add(cut.part(start, Math.min(from, all)));
        } while (from < all);
        int parts = full.size();
        List<Figure> alike = IntStream.range(0, parts)
                .mapToObj(i -> cut.part(i * all / parts, (i + 1) * all / parts))
                .toList();
        return alike.stream().allMatch(this::fits) ? alike : List.copyOf(full);
    }

    /** Turned where its columns do not fit beside one another, but its rows as columns do. */
    private Table laid(Table table) {
        Table turned = table.rows() > 0 && breaks(table) ? Sliced.turned(table) : table;
        return breaks(turned) ? table : turned;
    }

    private boolean breaks(Table table) {
        return FigurePainter.of(table, look.palette(), look.scale()) instanceof TablePainter painter
                && painter.breaks(width);
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
        return FigurePainter.of(part, look.palette(), look.scale()).preferredSize(width).height
                <= height.applyAsInt(part);
    }
}
