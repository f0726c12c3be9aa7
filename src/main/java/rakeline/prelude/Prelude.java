package rakeline.prelude;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Bundled;
import rakeline.figure.BikeDrawing;
import rakeline.figure.Drawing;
import rakeline.figure.MeasureTable;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.BikeOrRide;
import rakeline.geometry.ContactMeasures;
import rakeline.geometry.Inputs;
import rakeline.geometry.MassInputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Refit;
import rakeline.geometry.Setting;
import rakeline.geometry.ToeMeasures;
import rakeline.handling.HandlingMeasures;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Keyed;
import rakeline.quantity.Measure;
import rakeline.rider.RiderMeasures;
import rakeline.study.Vocabulary;

/** What a row may call by its bare name, beside the constants of inputs and measures. */
public final class Prelude {
    /** The classes whose methods a row may call by their bare names. */
    public static final List<Class<?>> FACADES =
            List.of(Prelude.class, Studies.class, Fitting.class, Charts.class, Riders.class, Handling.class);

    /** The classes whose constants a row may name. */
    public static final List<Class<?>> CONSTANTS = List.of(
            Inputs.class,
            MassInputs.class,
            Measures.class,
            ToeMeasures.class,
            ContactMeasures.class,
            RiderMeasures.class,
            HandlingMeasures.class);

    /** The imports in force in every row. */
    public static final List<String> IMPORTS = Stream.concat(
                    Stream.of(
                            "import java.util.*;",
                            "import java.util.function.*;",
                            "import java.util.stream.*;",
                            "import static java.lang.Math.*;",
                            "import rakeline.quantity.*;",
                            "import rakeline.geometry.*;",
                            "import rakeline.geometry.parts.*;",
                            "import rakeline.rider.*;",
                            "import rakeline.handling.*;",
                            "import rakeline.study.*;",
                            "import rakeline.figure.*;",
                            "import rakeline.prelude.*;"),
                    Stream.concat(CONSTANTS.stream(), FACADES.stream())
                            .map(type -> "import static " + type.getName() + ".*;"))
            .toList();

    private Prelude() {}

    /** The bike of a file, looked for in the worksheet's folder, your Rakeline folder and among what is bundled. */
    public static Bike bike(String bikeFile) {
        return BikeFile.read(Surroundings.current().roots().read(bikeFile, BikeFile.SIZE_LIMIT), bikeFile);
    }

    /**
     * A dial: a number that a person moves, starting at {@code initial}; only as the whole initialiser of a variable.
     *
     * @param min the low end, in the unit
     * @param max the high end, above the low one
     * @param step from stop to stop, above 0
     * @param initial where it stands at first, between the ends
     */
    public static double dial(String label, String unit, double min, double max, double step, double initial) {
        return Surroundings.current().dial(DialRequest.free(label, unit, min, max, step, initial));
    }

    /**
     * A dial bound to an input: label, unit and step from its declaration, starting at the bike's own value. Where the
     * range does not hold that, it is widened to it, and the row says so.
     *
     * @param min the low end, in the input's unit
     * @param max the high end, above the low one
     */
    public static double dial(Input input, BikeOrRide bike, double min, double max) {
        return dial(Setting.of(input), bike, min, max);
    }

    /**
     * A dial bound to the input with this key: label, unit and step from its declaration, starting at the bike's own
     * value. Where the range does not hold that, it is widened to it, and the row says so.
     *
     * @param min the low end, in the input's unit
     * @param max the high end, above the low one
     */
    public static double dial(String inputKey, BikeOrRide bike, double min, double max) {
        return dial(Setting.of(inputKey), bike, min, max);
    }

    /**
     * Starts a sweep of a bike, or of a bike and who rides it: {@code sweep(it).over(HEAD_ANGLE, 69,
     * 74).hold(TRAIL).by(FORK_OFFSET).track(TOE_ROOM).chart()}.
     */
    public static Sweeping sweep(BikeOrRide bike) {
        return Sweeping.of(Ride.of(bike));
    }

    /**
     * Every measure that there are the inputs for, of one bike or ride, or of several side by side; lengths in mm,
     * angles in degrees, other units with the name.
     */
    public static Table measures(BikeOrRide... bikes) {
        return MeasureTable.of(Vocabulary.standard(), Asked.rides(bikes));
    }

    /** These measures, or inputs, of one bike or ride, or of several side by side. */
    public static Table measures(List<? extends Keyed> chosen, BikeOrRide... bikes) {
        return MeasureTable.of(
                chosen.stream()
                        .map(keyed -> Vocabulary.standard().tracked(keyed.key()))
                        .toList(),
                Asked.rides(bikes));
    }

    /** The bikes to choose from: those on the worksheet's rack, or where it has none, the bundled ones. */
    public static List<Listed<Bike>> bikes() {
        List<String> rack = Surroundings.current().rack();
        return Listed.of(rack.isEmpty() ? Bundled.BIKES.paths() : rack, Prelude::bike, Bike::name);
    }

    /**
     * A picker: a choice that a person makes; only as the whole initialiser of a variable. It keeps its choice by path;
     * until one is made it stands at the first. A file that cannot be read is not offered, and the row says why.
     *
     * @throws rakeline.quantity.Refusal where the file of what is chosen cannot be read
     */
    public static <T> T pick(String label, List<Listed<T>> all) {
        return Surroundings.current().pick(new PickRequest<>(label, all)).item();
    }

    /** One measure or input of a bike or ride by key, in the unit that the key ends in; NaN where it has no value. */
    public static double measure(BikeOrRide bike, String key) {
        return Vocabulary.standard().tracked(key).read(Ride.of(bike)).orNaN();
    }

    /** One measure of a bike or ride, in its unit: lengths in mm, angles in degrees; NaN where it has no value. */
    public static double measure(BikeOrRide bike, Measure<?> measure) {
        return measure(bike, measure.key());
    }

    /**
     * The bike with another fork, wheel or tyre on its frame, which stays rigid and turns until both tyres touch.
     *
     * @param value the new value, in the input's unit
     */
    public static Bike refit(Bike bike, String inputKey, double value) {
        return Refit.of(bike, Setting.changes(Map.of(inputKey, value))).bike();
    }

    /**
     * The same rider on the bike with another fork, wheel or tyre on its frame.
     *
     * @param value the new value, in the input's unit
     */
    public static Ride refit(Ride ride, String key, double value) {
        return ride.on(refit(ride.bike(), key, value));
    }

    /** Side view to scale, with the rider if there is one, of one bike or several laid over each other at BB. */
    public static Drawing draw(BikeOrRide... bikes) {
        return BikeDrawing.sideView(Asked.rides(bikes));
    }

    /** Shoe and turned wheel from above, at the steering angle at which the shoe has least room. */
    public static Drawing drawFoot(BikeOrRide bike) {
        return BikeDrawing.planView(Ride.of(bike));
    }

    /**
     * Shoe and turned wheel from above, at a steering angle in degrees.
     *
     * @param steerDeg degrees, 0 to 90
     */
    public static Drawing drawFoot(BikeOrRide bike, double steerDeg) {
        return BikeDrawing.planView(Ride.of(bike), steerDeg);
    }

    private static double dial(Setting setting, BikeOrRide bike, double min, double max) {
        return Surroundings.current().dial(DialRequest.bound(setting, bike.bike(), min, max));
    }
}
