package rakeline.prelude;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.catalogue.DynamicsFile;
import rakeline.figure.ApartTable;
import rakeline.figure.Chart;
import rakeline.figure.MassTable;
import rakeline.figure.ResponseChart;
import rakeline.figure.StabilityChart;
import rakeline.figure.Table;
import rakeline.figure.TurnTable;
import rakeline.geometry.BikeOrRide;
import rakeline.geometry.Setting;
import rakeline.handling.Dynamics;
import rakeline.handling.Response;
import rakeline.handling.Response.Torque;
import rakeline.handling.Ride;
import rakeline.handling.SteadyTurn;
import rakeline.quantity.Keyed;
import rakeline.study.Apart;
import rakeline.study.Steps;
import rakeline.study.Vocabulary;

/** What a row may call about handling by its bare name. */
public final class Handling {
    private Handling() {}

    /** The linear bicycle of a dynamics file: its 25 numbers and what follows from them. */
    public static Dynamics dynamics(String dynamicsFile) {
        return DynamicsFile.read(
                Surroundings.current().roots().read(dynamicsFile, DynamicsFile.SIZE_LIMIT), dynamicsFile);
    }

    /**
     * Eigenvalues over speed, m/s, of the linear bicycle.
     *
     * @param from the lowest speed, m/s, 0 or more
     * @param to the highest speed, m/s
     */
    public static Chart eigenvalues(Dynamics dynamics, double from, double to) {
        return StabilityChart.of(dynamics.name(), dynamics.stability(), Steps.of(from, to));
    }

    /**
     * Eigenvalues over speed, m/s, of a bike and whoever rides it.
     *
     * @param from the lowest speed, m/s, 0 or more
     * @param to the highest speed, m/s
     */
    public static Chart eigenvalues(BikeOrRide bike, double from, double to) {
        Ride ride = Ride.of(bike);
        return StabilityChart.of(ride.name(), ride.stability(), Steps.of(from, to));
    }

    /**
     * The eigenvalues as numbers, at speeds a step apart, m/s.
     *
     * @param from the lowest speed, m/s, 0 or more
     * @param to the highest speed, m/s
     * @param step from speed to speed, m/s, above 0
     */
    public static Table eigenvalues(Dynamics dynamics, double from, double to, double step) {
        return StabilityChart.table(dynamics.name(), dynamics.stability(), Steps.of(from, to, step));
    }

    /**
     * Lean and steer after a step of 1 N m, {@code "steer"} or {@code "lean"} torque, at a speed, m/s.
     *
     * @param speedMps m/s, 0 or more
     * @param seconds how long to follow it, s, above 0
     */
    public static Chart step(Dynamics of, String torque, double speedMps, double seconds) {
        return ResponseChart.step(of.name(), response(of, torque, speedMps), Steps.of(0, seconds));
    }

    /**
     * Lean and steer of a bike and whoever rides it after a step of 1 N m, at a speed, m/s.
     *
     * @param speedMps m/s, 0 or more
     * @param seconds how long to follow it, s, above 0
     */
    public static Chart step(BikeOrRide of, String torque, double speedMps, double seconds) {
        return step(Dynamics.of(Ride.of(of)), torque, speedMps, seconds);
    }

    /**
     * Amplitude and phase of lean and steer under a torque that swings, up to an angular frequency, rad/s.
     *
     * @param speedMps m/s, 0 or more
     * @param topRadPerS the highest angular frequency, rad/s, above 0
     */
    public static Chart swing(Dynamics of, String torque, double speedMps, double topRadPerS) {
        return ResponseChart.swing(of.name(), response(of, torque, speedMps), Steps.of(0, topRadPerS));
    }

    /**
     * Amplitude and phase of lean and steer of a bike and whoever rides it, under a torque that swings.
     *
     * @param speedMps m/s, 0 or more
     * @param topRadPerS the highest angular frequency, rad/s, above 0
     */
    public static Chart swing(BikeOrRide of, String torque, double speedMps, double topRadPerS) {
        return swing(Dynamics.of(Ride.of(of)), torque, speedMps, topRadPerS);
    }

    private static Response response(Dynamics of, String torque, double speedMps) {
        return new Response(of.stability().bicycle(), speedMps, Torque.of(torque));
    }

    /** The masses that handling rests on, each with its source. */
    public static Table masses(BikeOrRide bike) {
        Ride ride = Ride.of(bike);
        return MassTable.of(ride.bike().name(), ride.mount());
    }

    /**
     * A steady turn at a speed, km/h, and a lean, degrees.
     *
     * @param speedKmh km/h, 0 to 100
     * @param leanDeg degrees from upright, 0 to 50
     */
    public static Table turn(BikeOrRide bike, double speedKmh, double leanDeg) {
        Ride ride = Ride.of(bike);
        return TurnTable.of(ride, SteadyTurn.leaning(ride, speedKmh, leanDeg));
    }

    /** Each change alone with the others held, all together and the remainder, in per cent of the present bike. */
    public static Table apart(BikeOrRide bike, Map<? extends Keyed, Double> changes, Keyed... measures) {
        Map<Setting, Double> settings = new LinkedHashMap<>();
        changes.entrySet().stream()
                .sorted(Comparator.comparing(change -> change.getKey().key()))
                .forEach(change -> settings.put(Setting.of(change.getKey().key()), change.getValue()));
        List<String> keys = Arrays.stream(measures).map(Keyed::key).toList();
        return ApartTable.of(Apart.of(
                Ride.of(bike),
                settings,
                keys.stream().map(Vocabulary.standard()::tracked).toList()));
    }
}
