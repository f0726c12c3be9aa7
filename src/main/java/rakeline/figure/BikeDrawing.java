package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import rakeline.handling.Ride;
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
    public static Drawing sideView(List<Ride> rides) {
        List<Drawing.Mark> marks = new ArrayList<>();
        for (int overlay = 0; overlay < rides.size(); overlay++) {
            marks.addAll(SideMarks.of(rides.get(overlay).geometry(), overlay));
            marks.addAll(RiderMarks.of(rides.get(overlay).ridden(), overlay));
        }
        if (!rides.isEmpty()) {
            marks.addAll(SideMarks.dimensions(rides.get(0).geometry()));
        }
        return new Drawing("Side view", title(rides), marks, columns(rides, SIDE_KEYS), "", List.of());
    }

    /**
     * Shoes and turned wheel from above.
     *
     * @param steerDeg steering angle, positive to the left
     */
    public static Drawing planView(Ride ride, double steerDeg) {
        List<Ride> one = List.of(ride);
        String held = "bar turned " + rakeline.quantity.Decimals.fixed(steerDeg, 1)
                + "° to the left, cranks level, right foot forward.";
        return new Drawing(
                "Foot and wheel",
                title(one),
                PlanMarks.of(ride.geometry(), Math.toRadians(steerDeg)),
                columns(one, PLAN_KEYS),
                held,
                List.of(Vocabulary.standard().quantity("toeRoomMm").caution()));
    }

    private static String title(List<Ride> rides) {
        return String.join(", ", rides.stream().map(ride -> ride.bike().name()).toList());
    }

    private static List<Column> columns(List<Ride> rides, List<String> keys) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofWords(
                Drawing.LAYER,
                "Bike",
                rides.stream().map(ride -> ride.bike().name()).toList()));
        keys.stream()
                .map(Vocabulary.standard()::tracked)
                .map(measure -> column(measure, rides))
                .forEach(columns::add);
        return columns;
    }

    private static Column column(Measure<Ride> measure, List<Ride> rides) {
        return Column.of(
                measure.quantity(),
                Numbers.generate(rides.size(), i -> measure.read(rides.get(i)).orNaN()));
    }
}
