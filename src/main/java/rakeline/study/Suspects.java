package rakeline.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.quantity.Input;

/** Looks for the one number of a chart that is not like the others. */
final class Suspects {
    /** Numbers whose explanations lie closer than this, in standard deviations of rounding, cannot be told apart. */
    private static final double ALIKE = 1;

    private final Rounding rounding;

    private Suspects(Rounding rounding) {
        this.rounding = rounding;
    }

    /** Most likely first, group by group. */
    static List<Suspect> of(ChartedBike chart, Crew crew, Progress progress) {
        if (chart.residuals().stream().allMatch(Residual::isWithin)) {
            return List.of();
        }
        Rounding rounding = Rounding.of(chart);
        List<Setting> settings = settings(chart).toList();
        List<Suspicion> found =
                crew.map(settings.size(), i -> Suspicion.of(chart, rounding, settings.get(i)), progress).stream()
                        .flatMap(Optional::stream)
                        .sorted(Comparator.comparingDouble(Suspicion::weight).reversed())
                        .toList();
        return new Suspects(rounding)
                .grouped(found).stream().flatMap(Suspects::asSuspects).toList();
    }

    private List<List<Suspicion>> grouped(List<Suspicion> found) {
        List<List<Suspicion>> groups = new ArrayList<>();
        List<Suspicion> rest = new ArrayList<>(found);
        while (!rest.isEmpty()) {
            Suspicion first = rest.get(0);
            List<Suspicion> group =
                    rest.stream().filter(other -> isLike(first, other)).toList();
            groups.add(group);
            rest.removeAll(group);
        }
        groups.sort(Comparator.comparingDouble(Suspects::weight).reversed());
        return groups;
    }

    private boolean isLike(Suspicion one, Suspicion other) {
        double[] apart = IntStream.range(0, one.left().size())
                .mapToDouble(i -> one.left().at(i) - other.left().at(i))
                .toArray();
        return rounding.square(apart) <= ALIKE * ALIKE;
    }

    private static double weight(List<Suspicion> group) {
        return group.stream().mapToDouble(Suspicion::weight).sum();
    }

    private static Stream<Suspect> asSuspects(List<Suspicion> group) {
        List<String> keys = group.stream().map(one -> one.setting().key()).toList();
        return group.stream()
                .map(one -> one.asSuspect(keys.stream()
                        .filter(key -> !key.equals(one.setting().key()))
                        .toList()));
    }

    /** What can be wrong: charted cells, printed numbers, and sizes that both wheels share. */
    private static Stream<Setting> settings(ChartedBike chart) {
        Bike bike = chart.bike();
        Stream<Setting> charted = chart.checks().stream().map(check -> Setting.of(check.charted()));
        Stream<Setting> printed =
                Inputs.all().stream().filter(input -> isPrinted(input, bike)).map(Setting::of);
        Stream<Setting> both = Setting.keys().stream()
                .map(Setting::of)
                .filter(setting -> setting.inputs().size() > 1)
                .filter(setting -> setting.inputs().stream().allMatch(input -> isPrinted(input, bike)))
                .filter(setting -> isShared(setting, bike));
        return Stream.of(charted, printed, both).flatMap(settings -> settings);
    }

    private static boolean isShared(Setting setting, Bike bike) {
        return setting.inputs().stream().mapToDouble(bike::get).distinct().count() == 1;
    }

    /** The seat angle's height counts as printed: where it is not, it is taken to be the stack. */
    private static boolean isPrinted(Input input, Bike bike) {
        boolean given = bike.given().has(input) || input.equals(Inputs.SEAT_ANGLE_AT);
        boolean ofFrame = input.key().startsWith("frame.") || input.equals(Inputs.FORK_OFFSET);
        return given && (ofFrame || isWheelSize(input, bike));
    }

    /** A radius that is given leaves its wheel's sizes without a say. */
    private static boolean isWheelSize(Input input, Bike bike) {
        Input radius = input.key().startsWith("wheels.front.") ? Inputs.FRONT_RADIUS : Inputs.REAR_RADIUS;
        return input.key().startsWith("wheels.")
                && (input.equals(radius) || !bike.given().has(radius));
    }
}
