package rakeline.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Setting;
import rakeline.geometry.ToeMeasures;
import rakeline.quantity.Declared;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Nearest;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;

/**
 * Everything that can be set or measured, by key: what files, commands, completion, axes and help read.
 *
 * @param measures by key, in the order of the declarations
 * @param constants the names that worksheets use, with the key each stands for
 */
public record Vocabulary(Map<String, Measure<Geometry>> measures, Map<String, String> constants) {
    private static final Vocabulary STANDARD = new Vocabulary(
                    Map.of(), constantsOf(Inputs.class, Input.class, Input::key))
            .and(Measures.class)
            .and(ToeMeasures.class);

    public Vocabulary {
        measures = Collections.unmodifiableMap(new LinkedHashMap<>(measures));
        constants = Collections.unmodifiableMap(new LinkedHashMap<>(constants));
    }

    /** What this version of the program declares. */
    public static Vocabulary standard() {
        return STANDARD;
    }

    /** With the measures, of {@link Geometry}, that one more class declares as public constants. */
    @SuppressWarnings({"unchecked", "rawtypes"}) // a class of declarations holds measures of Geometry alone
    public Vocabulary and(Class<?> holder) {
        Map<String, Measure<Geometry>> more = new LinkedHashMap<>(measures);
        Declared.in(holder, Measure.class).values().forEach(measure -> more.put(measure.key(), measure));
        Map<String, String> names = new LinkedHashMap<>(constants);
        names.putAll(constantsOf(holder, Measure.class, Measure::key));
        return new Vocabulary(more, names);
    }

    /**
     * The measure with a key.
     *
     * @throws Refusal for an unknown key, naming the nearest
     */
    public Measure<Geometry> measure(String key) {
        Measure<Geometry> measure = measures.get(key);
        if (measure == null) {
            throw new Refusal(key + " is not a measure" + Nearest.hint(key, measures.keySet()));
        }
        return measure;
    }

    /**
     * A measure, or an input read as one: what a study can track.
     *
     * @throws Refusal for an unknown key, naming the nearest
     */
    public Measure<Geometry> tracked(String key) {
        if (measures.containsKey(key)) {
            return measures.get(key);
        }
        if (Setting.keys().contains(key)) {
            return asMeasure(Setting.of(key));
        }
        throw new Refusal(key + " is neither a measure nor an input" + Nearest.hint(key, keys()));
    }

    /** Every key that can be set or measured. */
    public List<String> keys() {
        TreeSet<String> keys = new TreeSet<>(Setting.keys());
        keys.addAll(measures.keySet());
        return List.copyOf(keys);
    }

    /**
     * What a key means.
     *
     * @throws Refusal for an unknown key, naming the nearest
     */
    public Quantity quantity(String key) {
        return tracked(key).quantity();
    }

    /** Every measure's reading on a bike, by key. */
    public Map<String, Reading> readings(Geometry geometry) {
        Map<String, Reading> readings = new LinkedHashMap<>();
        measures.forEach((key, measure) -> readings.put(key, measure.read(geometry)));
        return Collections.unmodifiableMap(readings);
    }

    private static Measure<Geometry> asMeasure(Setting setting) {
        return new Measure<>(setting.quantity(), geometry -> readInput(setting, geometry.bike()));
    }

    private static Reading readInput(Setting setting, Bike bike) {
        double value = setting.valueIn(bike);
        return Double.isNaN(value) ? Reading.lacking(setting.key()) : Reading.of(value);
    }

    private static <T> Map<String, String> constantsOf(
            Class<?> holder, Class<T> type, java.util.function.Function<T, String> key) {
        Map<String, String> names = new LinkedHashMap<>();
        Declared.in(holder, type).forEach((name, constant) -> names.put(name, key.apply(constant)));
        return names;
    }
}
