package rakeline.study.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rakeline.geometry.Bike;
import rakeline.geometry.ContactMeasures;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Point;
import rakeline.geometry.ToeMeasures;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Field;
import rakeline.geometry.parts.Spacers;
import rakeline.quantity.Decimals;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
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

    private static final List<Measure<Geometry>> SEAT = List.of(
            Measures.POST_EXTENSION,
            Measures.POST_INSERTION_LEFT,
            Measures.POST_DEPTH_LEFT,
            Measures.RAIL_SHIFT,
            Measures.RAIL_LEFT);
    private static final List<Measure<Geometry>> FOOT = List.of(
            ToeMeasures.TOE_ROOM,
            ToeMeasures.TOE_CONTACT_STEER,
            ToeMeasures.PEDAL_TO_TYRE,
            ToeMeasures.PEDAL_STRIKE_LEAN);
    private static final List<Brought> BROUGHT = brought();

    private record Brought(Quantity quantity, Input input) {}

    public Option {
        facts = List.copyOf(facts);
        exceeded = List.copyOf(exceeded);
    }

    static Option of(Match match, Geometry built, Geometry foot, List<Exceeded> exceeded) {
        Point miss = built.handPoint().orElseThrow().at().minus(match.wanted().hand());
        List<Fact> facts = new ArrayList<>();
        BROUGHT.stream()
                .filter(part -> built.bike().has(part.input()))
                .forEach(
                        part -> facts.add(new Fact(part.quantity(), built.bike().get(part.input()))));
        facts.add(read(Measures.HAND_X, built));
        facts.add(read(Measures.HAND_Y, built));
        facts.add(new Fact(FitQuantities.HAND_DX, miss.x()));
        facts.add(new Fact(FitQuantities.HAND_DY, miss.y()));
        facts.add(new Fact(FitQuantities.DISTANCE, miss.length()));
        facts.add(read(Measures.STEM_RISE, built));
        facts.add(read(Measures.SPACERS_LEFT, built));
        facts.add(read(Measures.STEERER_LEFT, built));
        if (match.wanted().sit().isPresent()) {
            SEAT.forEach(measure -> facts.add(read(measure, built)));
            facts.add(read(ContactMeasures.SIT_MISS, built));
        }
        FOOT.forEach(measure -> facts.add(read(measure, foot)));
        facts.add(read(Measures.TRAIL, built));
        facts.add(read(Measures.HAND_LEVER, built));
        facts.add(change(FitQuantities.LEVER_CHANGE, Measures.HAND_LEVER, built, match.reference()));
        facts.add(change(FitQuantities.TURN_CHANGE, Measures.TURN_PER_HAND_TRAVEL, built, match.reference()));
        return new Option(built.bike(), miss, facts, exceeded);
    }

    /** Hoods to where they are wanted. */
    public double distanceMm() {
        return handMiss.length();
    }

    /** The bike, its name saying stem and spacers. */
    public Bike named() {
        return bike.named(bike.name() + ", stem " + Decimals.shortest(bike.get(Inputs.STEM_LENGTH)) + " mm "
                + Decimals.shortest(bike.get(Inputs.STEM_ANGLE)) + "°, spacers "
                + Decimals.shortest(bike.get(Inputs.SPACERS)) + " mm");
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

    /** The fewest stock spacers that make its stack; empty where the stock has none or the stack is the bike's own. */
    public List<Double> pieces(Optional<Spacers> stock) {
        return stock.map(spacers -> spacers.stacks().getOrDefault(bike.get(Inputs.SPACERS), List.of()))
                .orElse(List.of());
    }

    /** Stem and spacers first, then the other parts' numbers in the order of their keys. */
    private static List<Brought> brought() {
        List<Field> fields = new ArrayList<>(
                Category.STEMS.fields().stream().filter(Field::needed).toList());
        fields.addAll(Category.SPACERS.fields());
        Category.allFields().stream().filter(field -> !fields.contains(field)).forEach(fields::add);
        return fields.stream()
                .map(field -> new Brought(field.quantity(), field.inputs().get(0)))
                .toList();
    }

    private static Fact read(Measure<Geometry> measure, Geometry geometry) {
        return new Fact(measure.quantity(), measure.read(geometry).orNaN());
    }

    private static Fact change(Quantity quantity, Measure<Geometry> measure, Geometry now, Geometry before) {
        return new Fact(
                quantity,
                100 * (measure.read(now).orNaN() / measure.read(before).orNaN() - 1));
    }
}
