package rakeline.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Point;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.ToeMeasures;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;

/** What a plan view shows, by key, each with the plan view itself. */
final class PlanLengths {
    private static final double BESIDE = 90;

    /** The steering angle that a quantity of the toes is shown at. */
    private static final Map<Measure<Geometry>, Measure<Geometry>> TURNED = Map.of(
            ToeMeasures.TOE_ROOM, ToeMeasures.TOE_ROOM_STEER,
            ToeMeasures.TOE_ROOM_STEER, ToeMeasures.TOE_ROOM_STEER,
            ToeMeasures.TOE_CONTACT_STEER, ToeMeasures.TOE_CONTACT_STEER);

    private final Geometry geometry;
    private final Map<String, List<Mark>> marks = new LinkedHashMap<>();

    private PlanLengths(Geometry geometry) {
        this.geometry = geometry;
    }

    static Map<String, List<Mark>> of(Geometry geometry) {
        PlanLengths lengths = new PlanLengths(geometry);
        if (geometry.bike().hasGroup("crank") && geometry.bike().hasGroup("shoe")) {
            lengths.feet(geometry.bike());
            TURNED.forEach(lengths::turned);
        }
        return lengths.marks;
    }

    private void feet(Bike bike) {
        double half = bike.get(Inputs.STANCE_WIDTH) / 2;
        Point pedal = new Point(bike.get(Inputs.CRANK_LENGTH), -half);
        length(Inputs.STANCE_WIDTH.quantity(), new Point(pedal.x(), half), pedal, -BESIDE);
        length(
                Inputs.TOE_FORWARD.quantity(),
                pedal,
                new Point(pedal.x() + bike.get(Inputs.TOE_FORWARD), -half),
                -BESIDE);
    }

    private void length(Quantity quantity, Point from, Point to, double offset) {
        List<Mark> all = new ArrayList<>(PlanMarks.of(geometry, 0));
        String words = quantity.formatWithUnit(Math.hypot(to.x() - from.x(), to.y() - from.y()));
        all.add(new Dimension(from, to, offset, words, quantity.key(), Ink.BOLD, 0));
        marks.put(quantity.key(), all);
    }

    private void turned(Measure<Geometry> shown, Measure<Geometry> steer) {
        if (steer.read(geometry) instanceof Reading.Known) {
            double steerDeg = steer.read(geometry).orNaN();
            List<Mark> all = new ArrayList<>(PlanMarks.of(geometry, Math.toRadians(steerDeg)));
            all.addAll(PlanWords.turned(geometry, steerDeg));
            marks.put(shown.key(), all);
        }
    }
}
