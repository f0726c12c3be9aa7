package rakeline.study.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Setting;
import rakeline.geometry.ToeMeasures;
import rakeline.handling.Ride;
import rakeline.quantity.Limit;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Range;
import rakeline.quantity.Refusal;

/**
 * How much longer a crank, how much further forward a toe, how much larger a tyre or guard could be before a measure
 * that falls with it meets its limit; everything else as it is, tyres refitted.
 */
final class Spare {
    private static final double TOLERANCE = 1e-9;
    private static final int HALVINGS = 20;
    private static final List<String> BEFORE_THE_TOE_TOUCHES =
            List.of("crank.lengthMm", "shoe.toeForwardMm", "wheels.both.tyreMm", "wheels.front.mudguardGapMm");

    private final Setting setting;
    private final Measure<Geometry> measure;
    private final Limit limit;

    private Spare(String key, Measure<Geometry> measure) {
        this.setting = Setting.of(key);
        this.measure = measure;
        this.limit = measure.quantity().limits().get(0);
    }

    /** What is to spare of crank, cleat position, tyre and guard. */
    static List<Left> of(List<Ride> rides) {
        List<Left> rows = new ArrayList<>();
        BEFORE_THE_TOE_TOUCHES.forEach(key -> rows.add(new Spare(key, ToeMeasures.TOE_ROOM).left(rides)));
        rows.add(new Spare("crank.lengthMm", ToeMeasures.PEDAL_STRIKE_LEAN).left(rides));
        return rows;
    }

    private Left left(List<Ride> rides) {
        Numbers values = Numbers.generate(rides.size(), i -> value(rides.get(i).bike()));
        Numbers ends = Numbers.generate(rides.size(), i -> end(rides.get(i).bike()));
        Quantity meets = measure.quantity();
        Limit until = new Limit(
                Double.NaN,
                "until " + meets.label() + " is down to " + meets.formatWithUnit(limit.value()),
                limit.source(),
                Limit.Side.AT_MOST);
        return new Left(
                setting.quantity(), until, values, Numbers.generate(rides.size(), i -> ends.at(i) - values.at(i)));
    }

    /** A guard that is not there is none. */
    private double value(Bike bike) {
        double value = setting.valueIn(bike);
        return Double.isNaN(value) && setting.key().endsWith("mudguardGapMm") ? 0 : value;
    }

    /** The value at which the measure meets its limit; NaN where none does, or the bike lacks what it takes. */
    private double end(Bike bike) {
        if (Double.isNaN(measure.read(Geometry.of(bike)).orNaN())) {
            return Double.NaN;
        }
        Range range = setting.quantity().accepted();
        double to = largest(bike, range.to());
        return hasRoom(bike, range.from()) && !hasRoom(bike, to) ? meeting(bike, range.from(), to) : Double.NaN;
    }

    /** By halves: in between the measure may have no value, as where the toe passes beside the tyre. */
    private double meeting(Bike bike, double room, double none) {
        double low = room;
        double high = none;
        while (high - low > TOLERANCE) {
            double middle = (low + high) / 2;
            boolean has = hasRoom(bike, middle);
            low = has ? middle : low;
            high = has ? high : middle;
        }
        return (low + high) / 2;
    }

    private boolean hasRoom(Bike bike, double value) {
        return !(left(bike, value) < 0);
    }

    /** The largest value up to an end with which there is a bicycle, found by going half the way back. */
    private double largest(Bike bike, double end) {
        double back = end - value(bike);
        double at = end;
        for (int i = 0; i < HALVINGS && Double.isNaN(left(bike, at)); i++) {
            back /= 2;
            at = value(bike) + back;
        }
        return at;
    }

    /** What the measure has left; NaN where there is no bicycle with the value. */
    private double left(Bike bike, double value) {
        try {
            Bike changed = Changed.of(bike, Map.of(setting.key(), value));
            return limit.leftOf(measure.read(Geometry.of(changed)).orNaN());
        } catch (Refusal e) {
            return Double.NaN;
        }
    }
}
