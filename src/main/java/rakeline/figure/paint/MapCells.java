package rakeline.figure.paint;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** The areas of a map: where the measure lies above a value, and where it has none. */
final class MapCells {
    private final MapLayout layout;
    private final int columns;
    private final int rows;

    MapCells(MapLayout layout) {
        this.layout = layout;
        this.columns = layout.map().x().size() - 1;
        this.rows = layout.map().y().size() - 1;
    }

    /** A corner of a cell and the measure there. */
    private record Corner(Point2D at, double value) {}

    /** Where the measure lies above a value; negative infinity is everywhere that it has one. */
    Path2D above(double level) {
        Path2D area = runs((i, j) -> least(i, j) >= level);
        for (int j = 0; j < rows; j++) {
            for (int i = 0; i < columns; i++) {
                if (least(i, j) < level && most(i, j) >= level) {
                    addPart(area, i, j, level);
                }
            }
        }
        return area;
    }

    /** Where a corner has no value. */
    Path2D gaps() {
        return runs((i, j) -> Double.isNaN(least(i, j)));
    }

    /** Picks cells by column and row. */
    private interface Choice {
        boolean takes(int i, int j);
    }

    /** The cells chosen, neighbours in a row as one piece. */
    private Path2D runs(Choice choice) {
        Path2D area = new Path2D.Double();
        for (int j = 0; j < rows; j++) {
            int start = -1;
            for (int i = 0; i <= columns; i++) {
                boolean taken = i < columns && choice.takes(i, j);
                if (taken && start < 0) {
                    start = i;
                } else if (!taken && start >= 0) {
                    addRun(area, start, i, j);
                    start = -1;
                }
            }
        }
        return area;
    }

    /** Of the cell's corners, NaN where one has none. */
    private double least(int i, int j) {
        return Math.min(Math.min(value(i, j), value(i + 1, j)), Math.min(value(i, j + 1), value(i + 1, j + 1)));
    }

    private double most(int i, int j) {
        return Math.max(Math.max(value(i, j), value(i + 1, j)), Math.max(value(i, j + 1), value(i + 1, j + 1)));
    }

    private double value(int i, int j) {
        return layout.map().at(i, j);
    }

    /** The cells from one column up to another. */
    private void addRun(Path2D area, int from, int to, int j) {
        add(area, List.of(layout.node(from, j), layout.node(to, j), layout.node(to, j + 1), layout.node(from, j + 1)));
    }

    /** The part of a cell that lies above the level. */
    private void addPart(Path2D area, int i, int j, double level) {
        List<Corner> corners = List.of(corner(i, j), corner(i + 1, j), corner(i + 1, j + 1), corner(i, j + 1));
        List<Point2D> part = new ArrayList<>();
        for (int k = 0; k < corners.size(); k++) {
            Corner here = corners.get(k);
            Corner next = corners.get((k + 1) % corners.size());
            if (here.value() >= level) {
                part.add(here.at());
            }
            if (here.value() >= level != next.value() >= level) {
                part.add(between(here, next, level));
            }
        }
        add(area, part);
    }

    private Corner corner(int i, int j) {
        return new Corner(layout.node(i, j), value(i, j));
    }

    private static Point2D between(Corner one, Corner other, double level) {
        double share = (level - one.value()) / (other.value() - one.value());
        return new Point2D.Double(
                one.at().getX() + share * (other.at().getX() - one.at().getX()),
                one.at().getY() + share * (other.at().getY() - one.at().getY()));
    }

    private static void add(Path2D area, List<Point2D> corners) {
        for (int i = 0; i < corners.size(); i++) {
            double x = corners.get(i).getX();
            double y = corners.get(i).getY();
            if (i == 0) {
                area.moveTo(x, y);
            } else {
                area.lineTo(x, y);
            }
        }
        area.closePath();
    }
}
