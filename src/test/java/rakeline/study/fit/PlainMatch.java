package rakeline.study.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import rakeline.geometry.Bike;
import rakeline.geometry.ContactMeasures;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Point;
import rakeline.geometry.Refit;
import rakeline.geometry.ToeMeasures;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Part;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Reading;

/** The plain search: each combination's bike is built, its measures are read, and all are sorted. */
public final class PlainMatch {
    private static final List<Measure<Geometry>> ABOVE_ZERO = List.of(
            Measures.SPACERS_LEFT,
            Measures.STEERER_LEFT,
            Measures.POST_EXTENSION,
            Measures.POST_INSERTION_LEFT,
            Measures.POST_DEPTH_LEFT,
            Measures.RAIL_LEFT);

    private static final Map<List<Double>, Map<String, Double>> FEET = new ConcurrentHashMap<>();

    /** A combination, as the plain search ranks it. */
    public record Found(
            Bike bike,
            boolean beyond,
            double distanceMm,
            double tightest,
            int changes,
            List<Double> saddle,
            Map<String, Double> parts) {
        double beyondToleranceMm() {
            return Math.max(0, distanceMm - Match.USUAL_TOLERANCE_MM);
        }
    }

    private PlainMatch() {}

    /** Every combination of a match with a known sit point and the usual limits and tolerance, best first. */
    public static List<Found> all(Match match, boolean withToes) {
        List<Found> found = new ArrayList<>();
        Bike base = match.wanted().on(match.bike());
        for (Map<Input, Double> parts : combinations(match, Category.values())) {
            found.add(found(match, base, built(match, base, parts), parts, withToes));
        }
        found.sort(Comparator.comparing(Found::beyond)
                .thenComparingDouble(Found::beyondToleranceMm)
                .thenComparing(Comparator.comparingDouble(Found::tightest).reversed())
                .thenComparingInt(Found::changes)
                .thenComparingDouble(Found::distanceMm)
                .thenComparingDouble(one -> one.bike().get(Inputs.SPACERS))
                .thenComparingDouble(one -> one.bike().get(Inputs.STEM_LENGTH))
                .thenComparing(Found::parts, PlainMatch::byKeys));
        return found;
    }

    /** The best of those that differ in nothing but a post that puts the saddle on the same point. */
    public static List<Found> withoutEquivalentPosts(List<Found> found) {
        Map<Object, Found> first = new LinkedHashMap<>();
        for (Found one : found) {
            Map<String, Double> others = new TreeMap<>(one.parts());
            others.keySet().removeIf(key -> key.startsWith("seatpost."));
            first.putIfAbsent(List.of(others, one.saddle()), one);
        }
        return List.copyOf(first.values());
    }

    private static Bike built(Match match, Bike base, Map<Input, Double> parts) {
        Map<Input, Double> exchanged = new HashMap<>();
        Map<Input, Double> others = new HashMap<>();
        parts.forEach((input, value) -> {
            boolean fork = input.key().startsWith("fork.") || input.key().startsWith("wheels.");
            (fork ? exchanged : others).put(input, value);
        });
        Bike fitted = exchanged.isEmpty() ? base : Refit.of(base, exchanged).bike();
        Bike limited = fitted.has(Inputs.SPACER_LIMIT)
                ? fitted
                : fitted.with(Inputs.SPACER_LIMIT, match.stock().spacerLimitMm());
        return match.wanted().seat(limited.redraw(new Part(others).on(limited)));
    }

    private static Found found(Match match, Bike base, Bike bike, Map<Input, Double> parts, boolean withToes) {
        Geometry geometry = Geometry.of(bike);
        Point hand = match.wanted().handOn(bike);
        double dx = Measures.HAND_X.read(geometry).orNaN() - hand.x();
        double dy = Measures.HAND_Y.read(geometry).orNaN() - hand.y();
        Map<Measure<Geometry>, Double> limits = new LinkedHashMap<>();
        ABOVE_ZERO.forEach(measure -> limits.put(measure, 0.0));
        if (withToes) {
            limits.put(ToeMeasures.TOE_ROOM, 0.0);
            limits.put(ToeMeasures.PEDAL_STRIKE_LEAN, 25.0);
        }
        Map<String, Double> byKey = new TreeMap<>();
        parts.forEach((input, value) -> byKey.put(input.key(), value));
        return new Found(
                bike,
                limits.entrySet().stream().anyMatch(limit -> isBelow(limit.getKey(), geometry, limit.getValue())),
                Math.hypot(dx, dy),
                Math.min(bike.get(Inputs.SPACERS) / 0.05, tightest(bike, limits)),
                changes(base, parts),
                saddle(geometry),
                byKey);
    }

    /** What is left in units of its uncertainty, or of half of the last decimal that is shown. */
    private static double tightest(Bike bike, Map<Measure<Geometry>, Double> limits) {
        Map<String, Double> uncertainties = uncertainties(bike, limits);
        return limits.entrySet().stream()
                .filter(limit -> limit.getKey().read(Geometry.of(bike)) instanceof Reading.Known)
                .mapToDouble(limit -> {
                    double left = limit.getKey().read(Geometry.of(bike)).orNaN() - limit.getValue();
                    double known = uncertainties.get(limit.getKey().key());
                    double half = 0.5 * Math.pow(10, -limit.getKey().quantity().decimals());
                    return left / (known > half ? known : half);
                })
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Those of the foot hang on nothing of the cockpit; they take long, and are worked out once for each crank. */
    private static Map<String, Double> uncertainties(Bike bike, Map<Measure<Geometry>, Double> limits) {
        List<Measure<Geometry>> foot = limits.keySet().stream()
                .filter(measure -> !ABOVE_ZERO.contains(measure))
                .toList();
        List<Double> key = Inputs.all().stream()
                .filter(input ->
                        !input.key().startsWith("cockpit.") && !input.key().startsWith("seatpost."))
                .map(bike::get)
                .toList();
        Map<String, Double> all = new HashMap<>(Errors.standardOf(bike, ABOVE_ZERO));
        all.putAll(FEET.computeIfAbsent(key, any -> foot.isEmpty() ? Map.of() : Errors.standardOf(bike, foot)));
        return all;
    }

    private static int changes(Bike base, Map<Input, Double> parts) {
        int changes = 0;
        for (Category category : Category.values()) {
            boolean differs = category.fields().stream()
                    .flatMap(field -> field.inputs().stream())
                    .anyMatch(input -> parts.containsKey(input) && base.get(input) != parts.get(input));
            changes += differs ? 1 : 0;
        }
        return changes;
    }

    /** Where the saddle comes to stand against where it is wanted, as far as post and rails reach. */
    private static List<Double> saddle(Geometry geometry) {
        if (!(ContactMeasures.SIT_MISS.read(geometry) instanceof Reading.Known)) {
            return List.of((double) System.identityHashCode(geometry));
        }
        Point off = ContactMeasures.sitOff(geometry.bike());
        return List.of(Math.rint(off.x() * 1e6) + 0.0, Math.rint(off.y() * 1e6) + 0.0);
    }

    private static boolean isBelow(Measure<Geometry> measure, Geometry geometry, double limit) {
        return measure.read(geometry) instanceof Reading.Known known && known.value() < limit;
    }

    private static List<Map<Input, Double>> combinations(Match match, Category... categories) {
        List<Map<Input, Double>> all = List.of(Map.of());
        for (Category category : categories) {
            List<Map<Input, Double>> more = new ArrayList<>();
            for (Map<Input, Double> one : all) {
                for (Part part : match.stock().choices(category)) {
                    Map<Input, Double> with = new HashMap<>(one);
                    with.putAll(part.numbers());
                    more.add(with);
                }
            }
            all = more;
        }
        return all;
    }

    /** In the order of the keys, the smaller number first. */
    private static int byKeys(Map<String, Double> one, Map<String, Double> other) {
        return one.keySet().stream()
                .map(key -> Double.compare(one.get(key), other.get(key)))
                .filter(order -> order != 0)
                .findFirst()
                .orElse(0);
    }
}
