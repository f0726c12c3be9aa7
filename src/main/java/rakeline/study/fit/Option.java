package rakeline.study.fit;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.quantity.Decimals;
import rakeline.quantity.Quantity;

/**
 * A combination of stock parts on a frame.
 *
 * @param bike the frame with these parts on it
 * @param handMiss its hoods minus where they are wanted
 * @param facts everything it is judged by, in the order in which it is shown
 * @param exceeded the limits it is beyond
 */
public record Option(Bike bike, Point handMiss, List<Fact> facts, List<Exceeded> exceeded) {
    /** A number of an option; NaN where it has none. */
    public record Fact(Quantity quantity, double value) {}

    public Option {
        facts = List.copyOf(facts);
        exceeded = List.copyOf(exceeded);
    }

    static Option of(Match match, Geometry built, Geometry foot, List<Exceeded> exceeded) {
        Point miss = built.handPoint().orElseThrow().at().minus(match.wanted().hand());
        return new Option(built.bike(), miss, Facts.of(match, built, foot, miss), exceeded);
    }

    /** Hoods to where they are wanted. */
    public double distanceMm() {
        return handMiss.length();
    }

    /** The bike, its name saying stem and spacers. */
    public Bike named() {
        return bike.named(bike.name() + ", stem " + Decimals.shown(bike.get(Inputs.STEM_LENGTH)) + " mm "
                + Decimals.shown(bike.get(Inputs.STEM_ANGLE)) + "°, spacers "
                + Decimals.shown(bike.get(Inputs.SPACERS)) + " mm");
    }

    /** A number by key; NaN where it has none. */
    public double get(String key) {
        return facts.stream()
                .filter(number -> number.quantity().key().equals(key))
                .mapToDouble(Fact::value)
                .findFirst()
                .orElse(Double.NaN);
    }

    /** What has to be set on a bike to have this one, by key. */
    public Map<String, Double> changesTo(Bike before) {
        Map<String, Double> changes = new TreeMap<>();
        Inputs.all().stream()
                .filter(bike.given()::has)
                .filter(input -> Double.compare(bike.get(input), before.get(input)) != 0)
                .forEach(input -> changes.put(input.key(), bike.get(input)));
        return changes;
    }

    /**
     * The fewest stock spacers that make its stack; empty where the stack is the bike's own.
     *
     * @param stacks as the stock has them
     */
    public List<Double> pieces(Map<Double, List<Double>> stacks) {
        return stacks.getOrDefault(bike.get(Inputs.SPACERS), List.of());
    }
}
