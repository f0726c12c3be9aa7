package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import rakeline.geometry.Geometry;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.study.Vocabulary;

/** Drawings of a bicycle from its geometry. */
public final class BikeDrawing {
    private static final List<String> SIDE_KEYS =
            List.of("trailMm", "wheelbaseMm", "frontCentreMm", "bbHeightMm", "frame.stackMm", "frame.reachMm");
    private static final List<String> PLAN_KEYS = List.of("toeRoomMm", "toeContactSteerDeg", "pedalToTyreMm");

    private BikeDrawing() {}

    /** Side view to scale of one bike, or of several laid over each other at BB. */
    public static Drawing sideView(List<Geometry> bikes) {
        List<Drawing.Mark> marks = new ArrayList<>();
        for (int overlay = 0; overlay < bikes.size(); overlay++) {
            marks.addAll(SideMarks.of(bikes.get(overlay), overlay));
        }
        if (!bikes.isEmpty()) {
            marks.addAll(SideMarks.dimensions(bikes.get(0)));
        }
        return new Drawing("Side view", title(bikes), marks, columns(bikes, SIDE_KEYS), "", List.of());
    }

    /**
     * Shoes and turned wheel from above.
     *
     * @param steerDeg steering angle, positive to the left
     */
    public static Drawing planView(Geometry bike, double steerDeg) {
        List<Geometry> one = List.of(bike);
        String held = "bar turned " + rakeline.quantity.Decimals.fixed(steerDeg, 1)
                + "° to the left, cranks level, right foot forward.";
        return new Drawing(
                "Foot and wheel",
                title(one),
                PlanMarks.of(bike, Math.toRadians(steerDeg)),
                columns(one, PLAN_KEYS),
                held,
                List.of(Vocabulary.standard().quantity("toeRoomMm").caution()));
    }

    private static String title(List<Geometry> bikes) {
        return String.join(
                ", ", bikes.stream().map(geometry -> geometry.bike().name()).toList());
    }

    private static List<Column> columns(List<Geometry> bikes, List<String> keys) {
        return keys.stream()
                .map(Vocabulary.standard()::tracked)
                .map(measure -> column(measure, bikes))
                .toList();
    }

    private static Column column(Measure<Geometry> measure, List<Geometry> bikes) {
        return Column.of(
                measure.quantity(),
                Numbers.generate(bikes.size(), i -> measure.read(bikes.get(i)).orNaN()));
    }
}
