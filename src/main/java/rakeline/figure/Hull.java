package rakeline.figure;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.hipparchus.geometry.euclidean.twod.hull.MonotoneChain;
import rakeline.figure.Drawing.Point;

/** The convex outline round points. */
final class Hull {
    private static final double TOLERANCE_MM = 1e-6;

    private Hull() {}

    static List<Point> of(List<Point> points) {
        List<Vector2D> vectors =
                points.stream().map(point -> new Vector2D(point.x(), point.y())).toList();
        return Arrays.stream(
                        new MonotoneChain(false, TOLERANCE_MM).generate(vectors).getVertices())
                .map(vertex -> new Point(vertex.getX(), vertex.getY()))
                .toList();
    }
}
