package rakeline.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.quantity.Decimals;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;
import rakeline.rider.Rider;

/** What a file leaves to usual values, or says that it assumes: each one sentence for people. */
public final class Assumptions {
    /** Numbers that are only compared with. */
    private static final String CHECKS = "charted";

    private Assumptions() {}

    /** Those of the bike or rider that rows name by a path; lists of parts assume nothing. */
    public static List<String> of(Roots roots, String path) {
        if (path.endsWith(PartsFile.ENDING)) {
            return List.of();
        }
        try {
            return path.endsWith(RiderFile.ENDING)
                    ? of(RiderFile.read(roots.read(path, RiderFile.SIZE_LIMIT), path))
                    : of(BikeFile.read(roots.read(path, BikeFile.SIZE_LIMIT), path));
        } catch (Refusal unreadable) {
            return List.of(path + " cannot be read now, so what it assumes is not known.");
        }
    }

    /** Those of a bike. */
    public static List<String> of(Bike bike) {
        List<String> said = new ArrayList<>();
        Predicate<Input> taken = input ->
                !bike.given().has(input) && bike.has(input) && !input.group().equals(CHECKS);
        said.add(sentence(
                bike,
                "usual values: ",
                input -> taken.test(input) && input.presence() instanceof Input.Presence.Defaulted));
        said.add(sentence(
                bike,
                "worked out from others: ",
                input -> taken.test(input) && input.presence() instanceof Input.Presence.Derived));
        for (Provenance.Origin origin : List.of(Provenance.Origin.ASSUMED, Provenance.Origin.SOLVED)) {
            said.add(sentence(bike, origin.word() + ": ", input -> comesFrom(bike, input, origin)));
        }
        said.removeIf(String::isEmpty);
        return said;
    }

    private static boolean comesFrom(Bike bike, Input input, Provenance.Origin origin) {
        return Optional.ofNullable(bike.provenance().get(input.key()))
                .flatMap(Provenance::from)
                .filter(origin::equals)
                .isPresent();
    }

    private static String sentence(Bike bike, String start, Predicate<Input> which) {
        List<String> numbers = Inputs.all().stream()
                .filter(which)
                .map(input -> words(input, bike.get(input)))
                .toList();
        return numbers.isEmpty() ? "" : bike.name() + ", " + start + String.join(", ", numbers) + ".";
    }

    /** Those of a rider. */
    public static List<String> of(Rider rider) {
        Map<Input, Double> assumed = rider.assumed();
        List<String> numbers = assumed.entrySet().stream()
                .map(entry -> words(entry.getKey(), entry.getValue()))
                .toList();
        return numbers.isEmpty()
                ? List.of()
                : List.of(rider.name() + ", usual values: " + String.join(", ", numbers) + ".");
    }

    private static String words(Input input, double value) {
        String label = input.quantity().label();
        String small = label.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + label.substring(1);
        return small + " " + input.quantity().unit().attach(Decimals.shown(Math.rint(value * 1000) / 1000));
    }
}
