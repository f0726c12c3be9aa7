package rakeline.geometry.toe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Room and gap of a toe that is turned out and pitched far, against a grid over crank and toe. */
class FieldsTest {
    private static final double CRANK = 60;
    private static final double HALF = 40;
    private static final double RADIUS = 20;
    private static final Point ACROSS = unit(0.3, 0.6, 0.74);
    private static final Toe TOE = new Toe(CRANK, new Point(0, 0, 0), ACROSS, HALF, RADIUS);

    @Test
    void roomAboveAndBelowTheCranksCircleIsThatOfTheGrid() {
        Random random = new Random(1);
        int beyond = 0;
        for (int i = 0; i < 150; i++) {
            double up = Math.copySign(50 + 54 * random.nextDouble(), random.nextDouble() - 0.5);
            Point point = new Point(200, up, 120 * random.nextDouble() - 60);
            double grid = room(point);
            double found = new RoomField(TOE).at(point).value();
            if (Double.isFinite(grid)) {
                assertThat(found)
                        .as("%s", point)
                        .isLessThanOrEqualTo(grid + 1e-9)
                        .isCloseTo(grid, within(1.5));
                beyond += Math.abs(point.y()) > CRANK + RADIUS ? 1 : 0;
            }
        }
        assertThat(beyond).isGreaterThan(10);
    }

    @Test
    void theNarrowestRoundOfAGapIsTheCranksCircleSeenAlongTheToe() {
        // D: an ellipse with the half axes crank and crank · cos has its narrowest round crank · cos² where it is
        // longest
        double cosine = ACROSS.z();
        Bend bend = new GapField(TOE).at(new Point(10, 5, 3)).bend();
        assertThat(bend.narrowest()).isCloseTo(CRANK * cosine * cosine, within(1e-12));
    }

    /** How far the toe comes forward before it touches a point; the least over crank angles and places along the toe. */
    private static double room(Point point) {
        return IntStream.rangeClosed(-360, 360)
                .mapToDouble(turn -> room(point, Math.toRadians(turn / 4.0)))
                .min()
                .orElseThrow();
    }

    private static double room(Point point, double crank) {
        Point middle = new Point(CRANK * Math.cos(crank), CRANK * Math.sin(crank), 0);
        return IntStream.rangeClosed(-400, 400)
                .mapToDouble(step -> ahead(point.minus(middle.plus(ACROSS.times(HALF * step / 400)))))
                .min()
                .orElseThrow();
    }

    private static double ahead(Point from) {
        double square = RADIUS * RADIUS - from.y() * from.y() - from.z() * from.z();
        return square < 0 ? Double.POSITIVE_INFINITY : from.x() - Math.sqrt(square);
    }

    private static Point unit(double x, double y, double z) {
        Point point = new Point(x, y, z);
        return point.times(1 / point.length());
    }
}
