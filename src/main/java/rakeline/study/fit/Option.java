package rakeline.study.fit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * @param margins what is left to each limit, the tightest first
 * @param equivalentPosts other posts of the stock that put the saddle on the same point, best first, each with its
 *     numbers and what it leaves
 */
public record Option(
        Bike bike, Point handMiss, List<Fact> facts, List<Margin> margins, List<List<Fact>> equivalentPosts) {
    /** A number of an option; NaN where it has none. */
    public record Fact(Quantity quantity, double value) {}

    public Option {
        facts = List.copyOf(facts);
        margins = List.copyOf(margins);
        equivalentPosts = List.copyOf(equivalentPosts);
    }

    static Option of(
            Match match, Geometry built, Geometry foot, List<Margin> margins, List<List<Fact>> equivalentPosts) {
        Point wanted = match.wanted().handOn(built.bike());
        Point miss = built.handPoint().orElseThrow().at().minus(wanted);
        return new Option(built.bike(), miss, Facts.of(match, built, foot, miss), margins, equivalentPosts);
    }

    /** The limits that it is beyond. */
    public List<Margin> exceeded() {
        return margins.stream().filter(Margin::isBeyond).toList();
    }

    /** Whether it is beyond none. */
    public boolean isWithinLimits() {
        return exceeded().isEmpty();
    }

    /** The limit to which the least is left, in units of its uncertainty; empty where none is known. */
    public Optional<Margin> tightest() {
        return margins.stream().findFirst();
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
