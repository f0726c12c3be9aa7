package rakeline.study.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rakeline.geometry.Geometry;
import rakeline.geometry.Measures;
import rakeline.geometry.ToeMeasures;
import rakeline.quantity.Declared;
import rakeline.quantity.Measure;

/** What a limit of a fitted bike hangs on: the parts that have to change before its measure does. */
enum Concern {
    /** Fork, cover, spacers and stem. */
    COCKPIT,
    /** Fork, tyres and post. */
    SEAT,
    /** Fork, tyres and crank. */
    FOOT;

    /** The measures that stock parts are ranked by, as long as nobody sets other limits. */
    List<Measure<Geometry>> usual() {
        return switch (this) {
            case COCKPIT -> List.of(Measures.SPACERS_LEFT, Measures.STEERER_LEFT);
            case SEAT ->
                List.of(
                        Measures.POST_EXTENSION,
                        Measures.POST_INSERTION_LEFT,
                        Measures.POST_DEPTH_LEFT,
                        Measures.RAIL_LEFT);
            case FOOT -> List.of(ToeMeasures.TOE_ROOM, ToeMeasures.PEDAL_STRIKE_LEAN);
        };
    }

    /** Every measure that a limit may be set for, by key. */
    Map<String, Measure<Geometry>> measures() {
        return this == FOOT ? byKey(Stream.concat(frame(), toe())) : byKey(usual().stream());
    }

    private static Stream<Measure<Geometry>> frame() {
        return Stream.of(
                Measures.TRAIL,
                Measures.FRONT_CENTRE,
                Measures.BB_HEIGHT,
                Measures.STANDOVER,
                Measures.PEDAL_MARGIN_FLAT,
                Measures.TOE_MARGIN_FLAT);
    }

    @SuppressWarnings("unchecked") // the class declares measures of a geometry alone
    private static Stream<Measure<Geometry>> toe() {
        return Declared.listIn(ToeMeasures.class, Measure.class).stream().map(measure -> (Measure<Geometry>) measure);
    }

    private static Map<String, Measure<Geometry>> byKey(Stream<Measure<Geometry>> measures) {
        Map<String, Measure<Geometry>> all = new LinkedHashMap<>();
        measures.forEach(measure -> all.put(measure.key(), measure));
        return all;
    }
}
