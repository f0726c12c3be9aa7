package rakeline.figure.paint;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The lines of a map along which the measure has one value: cell by cell, joined where they meet. */
final class Contours {
    private final MapLayout layout;
    private final double level;

    /** The crossings of the grid's edges in the order of their finding, each with those it is joined to. */
    private final Map<Edge, List<Edge>> joined = new LinkedHashMap<>();

    /** An edge of the grid, from a node to the next one to the right or upward. */
    private record Edge(int i, int j, boolean upward) {}

    private Contours(MapLayout layout, double level) {
        this.layout = layout;
        this.level = level;
    }

    /** The lines of a level, each as points in order; a closed one ends where it begins. */
    static List<List<Point2D>> of(MapLayout layout, double level) {
        Contours contours = new Contours(layout, level);
        for (int i = 0; i + 1 < layout.map().x().size(); i++) {
            for (int j = 0; j + 1 < layout.map().y().size(); j++) {
                contours.joinCell(i, j);
            }
        }
        return contours.lines();
    }

    static Path2D path(List<Point2D> line) {
        Path2D path = new Path2D.Double();
        path.moveTo(line.get(0).getX(), line.get(0).getY());
        line.subList(1, line.size()).forEach(point -> path.lineTo(point.getX(), point.getY()));
        return path;
    }

    private void joinCell(int i, int j) {
        boolean[] above = {isAbove(i, j), isAbove(i + 1, j), isAbove(i + 1, j + 1), isAbove(i, j + 1)};
        if (!isKnown(i, j) || !isKnown(i + 1, j) || !isKnown(i + 1, j + 1) || !isKnown(i, j + 1)) {
            return;
        }
        Edge[] edges = {new Edge(i, j, false), new Edge(i + 1, j, true), new Edge(i, j + 1, false), new Edge(i, j, true)
        };
        List<Edge> crossed = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
            if (above[k] != above[(k + 1) % 4]) {
                crossed.add(edges[k]);
            }
        }
        joinCrossed(crossed, above[0]);
    }

    /** In a saddle what lies above stays joined, as the shades have it. */
    private void joinCrossed(List<Edge> crossed, boolean firstAbove) {
        if (crossed.size() == 2) {
            join(crossed.get(0), crossed.get(1));
        } else if (crossed.size() == 4) {
            join(crossed.get(0), crossed.get(firstAbove ? 1 : 3));
            join(crossed.get(2), crossed.get(firstAbove ? 3 : 1));
        }
    }

    private void join(Edge one, Edge other) {
        joined.computeIfAbsent(one, edge -> new ArrayList<>()).add(other);
        joined.computeIfAbsent(other, edge -> new ArrayList<>()).add(one);
    }

    private List<List<Point2D>> lines() {
        Set<Edge> open = new LinkedHashSet<>();
        joined.forEach((edge, others) -> {
            if (others.size() == 1) {
                open.add(edge);
            }
        });
        open.addAll(joined.keySet());
        List<List<Point2D>> lines = new ArrayList<>();
        while (!open.isEmpty()) {
            lines.add(line(open.iterator().next(), open));
        }
        return lines;
    }

    /** From an edge on, until the line ends or closes. */
    private List<Point2D> line(Edge first, Set<Edge> open) {
        List<Point2D> line = new ArrayList<>();
        Edge here = first;
        while (here != null) {
            open.remove(here);
            line.add(crossing(here));
            here = joined.get(here).stream().filter(open::contains).findFirst().orElse(null);
        }
        if (joined.get(first).size() == 2) {
            line.add(line.get(0));
        }
        return line;
    }

    private Point2D crossing(Edge edge) {
        int i = edge.upward() ? edge.i() : edge.i() + 1;
        int j = edge.upward() ? edge.j() + 1 : edge.j();
        double from = layout.map().at(edge.i(), edge.j());
        double share = (level - from) / (layout.map().at(i, j) - from);
        Point2D one = layout.node(edge.i(), edge.j());
        Point2D other = layout.node(i, j);
        return new Point2D.Double(
                one.getX() + share * (other.getX() - one.getX()), one.getY() + share * (other.getY() - one.getY()));
    }

    private boolean isAbove(int i, int j) {
        return layout.map().at(i, j) >= level;
    }

    private boolean isKnown(int i, int j) {
        return !Double.isNaN(layout.map().at(i, j));
    }
}
