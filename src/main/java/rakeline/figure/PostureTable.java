package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.SourceNote;
import rakeline.rider.CrankChange;
import rakeline.rider.Rider;
import rakeline.rider.RiderMeasures;
import rakeline.study.Vocabulary;

/** A rider's posture as tables: every measure of it, what was assumed, and the same under other cranks. */
public final class PostureTable {
    /** What another crank changes of bicycle and rider. */
    private static final List<String> CRANK_KEYS = List.of(
            "saddleHeightMm",
            "saddleSetbackMm",
            "kneeFlexionBottomDeg",
            "hipAngleAtTopDeg",
            "hipAngleLeastDeg",
            "torsoAngleDeg",
            "saddleToBarDropMm",
            "saddleToHandReachMm",
            "toeGapLeastMm",
            "toeRoomMm",
            "pedalStrikeLeanDeg",
            "frontSharePercent");

    private PostureTable() {}

    /** Every measure of the rider, on one bicycle or on several side by side. */
    public static Table of(List<Ride> rides) {
        return MeasureTable.of(List.copyOf(Vocabulary.standard().measuresOf(RiderMeasures.class)), rides);
    }

    /** What the rider's file does not say, with the value taken, and how the masses are spread. */
    public static Table assumed(Rider rider) {
        List<Map.Entry<Input, Double>> rows = List.copyOf(rider.assumed().entrySet());
        return new Table(
                "Assumed of " + rider.name(),
                List.of(
                        Column.ofWords(
                                "key",
                                "Key",
                                rows.stream().map(row -> row.getKey().key()).toList()),
                        Column.ofWords(
                                "value",
                                "Value",
                                rows.stream().map(PostureTable::value).toList()),
                        Column.ofWords(
                                "source",
                                "Source",
                                rows.stream()
                                        .map(row -> row.getKey().quantity().sourceOf(SourceNote.Part.DEFAULT))
                                        .toList())),
                "masses by " + rider.table().source() + ".",
                List.of());
    }

    /** One row a crank: saddle, posture, bar drop, toe and pedal. */
    public static Table cranks(Ride ride, List<CrankChange> changes) {
        List<Ride> rides =
                changes.stream().map(change -> ride.on(change.on(ride.bike()))).toList();
        List<Column> columns = new ArrayList<>();
        List<Measure<Ride>> measures = new ArrayList<>();
        measures.add(Vocabulary.standard().tracked("crank.lengthMm"));
        CRANK_KEYS.stream().map(Vocabulary.standard()::measure).forEach(measures::add);
        measures.forEach(measure -> columns.add(Column.of(
                measure.quantity(),
                Numbers.generate(rides.size(), i -> measure.read(rides.get(i)).orNaN()))));
        String kept = changes.isEmpty() ? "" : changes.get(0).kept();
        return new Table(
                        ride.bike().name() + ", other cranks",
                        columns,
                        kept,
                        Quantity.cautionsOf(
                                measures.stream().map(Measure::quantity).toList()))
                .about(Basis.of(List.of(ride), measures.stream().map(Measure::key)));
    }

    private static String value(Map.Entry<Input, Double> row) {
        return row.getKey().quantity().formatWithUnit(row.getValue());
    }
}
