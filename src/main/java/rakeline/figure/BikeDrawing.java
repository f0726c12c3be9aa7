package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import rakeline.geometry.Cautions;
import rakeline.geometry.SideView;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.study.Vocabulary;

/** Drawings of a bicycle from its geometry. */
public final class BikeDrawing {
    private static final List<String> SIDE_KEYS =
            List.of("trailMm", "wheelbaseMm", "frontCentreMm", "bbHeightMm", "frame.stackMm", "frame.reachMm");
    private static final List<String> PLAN_KEYS = List.of("toeRoomMm", "toeContactSteerDeg", "pedalToTyreMm");

    private static final double USUAL_STEER_DEG = 15;

    private BikeDrawing() {}

    /** What several bikes that are laid over each other share. */
    public enum At {
        BB("the bottom bracket") {
            @Override
            Shifted shift(SideView first, SideView other) {
                return new Shifted(0, 0);
            }
        },
        REAR_AXLE("the rear axle") {
            @Override
            Shifted shift(SideView first, SideView other) {
                return new Shifted(
                        first.rearAxleXMm() - other.rearAxleXMm(), first.rearAxleYMm() - other.rearAxleYMm());
            }
        },
        GROUND("the ground, bottom brackets one above the other") {
            @Override
            Shifted shift(SideView first, SideView other) {
                return new Shifted(0, other.bbHeightMm() - first.bbHeightMm());
            }
        };

        private final String words;

        At(String words) {
            this.words = words;
        }

        /** How far another bike is moved on the sheet. */
        abstract Shifted shift(SideView first, SideView other);

        /** As in a choice. */
        @Override
        public String toString() {
            return words;
        }
    }

    /** Side view to scale of one bike, or of several laid over each other at BB. */
    public static Drawing sideView(List<Ride> rides) {
        return sideView(rides, At.BB);
    }

    /** Side view to scale of one bike, or of several laid over each other. */
    public static Drawing sideView(List<Ride> rides, At at) {
        List<Drawing.Mark> marks = new ArrayList<>();
        for (int overlay = 0; overlay < rides.size(); overlay++) {
            Ride ride = rides.get(overlay);
            List<Drawing.Mark> own = new ArrayList<>(SideMarks.of(ride.geometry(), overlay));
            own.addAll(RiderMarks.of(ride.ridden(), overlay));
            own.addAll(SideHandles.of(ride.geometry(), overlay));
            marks.addAll(
                    at.shift(rides.get(0).geometry().side(), ride.geometry().side())
                            .all(own));
        }
        if (!rides.isEmpty()) {
            marks.addAll(SideDimensions.of(rides.get(0).geometry()));
        }
        String held = rides.size() > 1 ? "laid over each other at " + at + "." : "";
        return new Drawing("Side view", title(rides), marks, columns(rides, SIDE_KEYS), held, List.of())
                .about(Basis.of(rides, SIDE_KEYS.stream()));
    }

    /** Shoes and turned wheel from above, at the steering angle at which the shoe has least room, where there is one. */
    public static Drawing planView(Ride ride) {
        double least =
                Vocabulary.standard().measure("toeRoomSteerDeg").read(ride).orNaN();
        return planView(ride, Double.isNaN(least) ? USUAL_STEER_DEG : least);
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
                        plan(ride, steerDeg),
                        columns(one, PLAN_KEYS),
                        held,
                        List.of(Cautions.TOE))
                .about(Basis.of(one, PLAN_KEYS.stream()));
    }

    /** With the steering angle, and the room of the shoe in words. */
    private static List<Drawing.Mark> plan(Ride ride, double steerDeg) {
        List<Drawing.Mark> marks = new ArrayList<>(PlanMarks.of(ride.geometry(), Math.toRadians(steerDeg)));
        marks.addAll(PlanWords.of(ride, steerDeg));
        return marks;
    }

    private static String title(List<Ride> rides) {
        return BikeNames.line(rides);
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
