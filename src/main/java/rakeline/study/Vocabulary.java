package rakeline.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import rakeline.geometry.Bike;
import rakeline.geometry.ContactMeasures;
import rakeline.geometry.Inputs;
import rakeline.geometry.MassInputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Setting;
import rakeline.geometry.ToeMeasures;
import rakeline.handling.HandlingMeasures;
import rakeline.handling.Ride;
import rakeline.quantity.Declared;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Keyed;
import rakeline.quantity.Lazy;
import rakeline.quantity.Measure;
import rakeline.quantity.Nearest;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.rider.Ridden;
import rakeline.rider.RiderKeys;
import rakeline.rider.RiderMeasures;

/**
 * Everything that can be set or measured, by key: what files, commands, completion, axes and help read.
 *
 * @param measures by key, in the order of the declarations
 * @param constants the names that worksheets use, with the key each stands for
 */
public record Vocabulary(Map<String, Measure<Ride>> measures, Map<String, String> constants) {
    private static final Vocabulary STANDARD = new Vocabulary(
                    Map.of(), constantsOfInputs(Inputs.class, MassInputs.class))
            .and(Measures.class, Ride::geometry)
            .and(ToeMeasures.class, Ride::geometry)
            .and(ContactMeasures.class, Ride::geometry)
            .and(RiderMeasures.class, Ride::ridden)
            .and(HandlingMeasures.class, ride -> ride);

    /** A bicycle that has cranks and a ride, and no shoe. */
    private static final Lazy<Ride> BAREFOOT = Lazy.of(Vocabulary::barefoot);

    public Vocabulary {
        measures = Collections.unmodifiableMap(new LinkedHashMap<>(measures));
        constants = Collections.unmodifiableMap(new LinkedHashMap<>(constants));
    }

    /** What this version of the program declares. */
    public static Vocabulary standard() {
        return STANDARD;
    }

    /**
     * With the measures that one more class declares as public constants.
     *
     * @param subject what of a ride they measure
     */
    @SuppressWarnings({"unchecked", "rawtypes"}) // a class of declarations holds measures of one subject alone
    public <S> Vocabulary and(Class<?> holder, Function<Ride, S> subject) {
        Map<String, Measure<Ride>> more = new LinkedHashMap<>(measures);
        for (Measure<S> measure : (Iterable<Measure<S>>) (Iterable) Declared.listIn(holder, Measure.class)) {
            more.put(measure.key(), new Measure<>(measure.quantity(), ride -> measure.read(subject.apply(ride))));
        }
        Map<String, String> names = new LinkedHashMap<>(constants);
        names.putAll(constantsOf(holder, Measure.class, Measure::key));
        return new Vocabulary(more, names);
    }

    /** The measures that a class declares. */
    public List<Measure<Ride>> measuresOf(Class<?> holder) {
        return Declared.listIn(holder, Keyed.class).stream()
                .map(declared -> measures.get(declared.key()))
                .toList();
    }

    /**
     * The measure with a key.
     *
     * @throws Refusal for an unknown key, naming the nearest
     */
    public Measure<Ride> measure(String key) {
        Measure<Ride> measure = measures.get(key);
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
    public Measure<Ride> tracked(String key) {
        if (measures.containsKey(key)) {
            return measures.get(key);
        }
        if (Setting.keys().contains(key)) {
            return asMeasure(Setting.of(key));
        }
        if (RiderKeys.all().contains(key)) {
            return asMeasure(RiderKeys.measure(key));
        }
        throw new Refusal((key.isBlank() ? "\"" + key + "\"" : key) + " is neither a measure nor an input"
                + Nearest.hint(key, keys()));
    }

    /**
     * What a study tracks: these keys, or where there is none, every measure that a ride has the inputs for.
     *
     * @throws Refusal for an unknown key, naming the nearest
     */
    public List<Measure<Ride>> chosen(List<String> keys, Ride ride) {
        return keys.isEmpty()
                ? measures.values().stream()
                        .filter(measure -> !(measure.read(ride) instanceof Reading.Lacking))
                        .toList()
                : keys.stream().map(this::tracked).toList();
    }

    /** Whether what a key means needs a shoe, and is another number for another shoe; false for an unknown key. */
    public boolean isOfShoe(String key) {
        Measure<Ride> measure = measures.get(key);
        return measure == null
                ? key.startsWith("shoe.")
                : measure.read(BAREFOOT.get()) instanceof Reading.Lacking lacking
                        && lacking.what().contains("shoe");
    }

    private static Ride barefoot() {
        Map<Input, Double> numbers = new LinkedHashMap<>();
        numbers.put(Inputs.STACK, 520.0);
        numbers.put(Inputs.REACH, 370.0);
        numbers.put(Inputs.HEAD_ANGLE, 72.0);
        numbers.put(Inputs.SEAT_ANGLE, 74.0);
        numbers.put(Inputs.CHAINSTAY, 410.0);
        numbers.put(Inputs.BB_DROP, 70.0);
        numbers.put(Inputs.FORK_OFFSET, 45.0);
        List.of(Inputs.FRONT_BEAD_SEAT, Inputs.REAR_BEAD_SEAT).forEach(input -> numbers.put(input, 622.0));
        List.of(Inputs.FRONT_TYRE, Inputs.REAR_TYRE).forEach(input -> numbers.put(input, 28.0));
        numbers.put(Inputs.CRANK_LENGTH, 170.0);
        numbers.put(Inputs.STANCE_WIDTH, 240.0);
        numbers.put(Inputs.RIDE_LEAN, 10.0);
        return Ride.of(Bike.of("", Entries.none().with(numbers), Set.of("crank", "ride"), Map.of()));
    }

    /** Every key that can be set or measured. */
    public List<String> keys() {
        TreeSet<String> keys = new TreeSet<>(Setting.keys());
        keys.addAll(RiderKeys.all());
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

    /** What every key means. */
    public List<Quantity> quantities() {
        return keys().stream().map(this::quantity).toList();
    }

    /** Every measure's reading of a ride, by key. */
    public Map<String, Reading> readings(Ride ride) {
        Map<String, Reading> readings = new LinkedHashMap<>();
        measures.forEach((key, measure) -> readings.put(key, measure.read(ride)));
        return Collections.unmodifiableMap(readings);
    }

    private static Measure<Ride> asMeasure(Setting setting) {
        return new Measure<>(setting.quantity(), ride -> readInput(setting, ride.bike()));
    }

    private static Measure<Ride> asMeasure(Measure<Ridden> ofRider) {
        return new Measure<>(ofRider.quantity(), ride -> ofRider.read(ride.ridden()));
    }

    private static Reading readInput(Setting setting, Bike bike) {
        double value = setting.valueIn(bike);
        return Double.isNaN(value) ? Reading.lacking(setting.quantity().inSentence()) : Reading.of(value);
    }

    private static Map<String, String> constantsOfInputs(Class<?>... holders) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Class<?> holder : holders) {
            names.putAll(constantsOf(holder, Input.class, Input::key));
        }
        return names;
    }

    private static <T> Map<String, String> constantsOf(Class<?> holder, Class<T> type, Function<T, String> key) {
        Map<String, String> names = new LinkedHashMap<>();
        Declared.in(holder, type).forEach((name, constant) -> names.put(name, key.apply(constant)));
        return names;
    }
}
