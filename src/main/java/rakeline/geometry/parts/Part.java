package rakeline.geometry.parts;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.quantity.Input;

/**
 * A stock part.
 *
 * @param numbers what it puts in place of the bike's own; nothing for what stays as it is on the bike
 */
public record Part(Map<Input, Double> numbers) implements Comparable<Part> {
    /** Whatever is on the bike. */
    public static final Part AS_IT_IS = new Part(Map.of());

    private static final Set<Input> HOODS =
            Set.of(Inputs.HOOD_FORWARD, Inputs.HOOD_RISE, Inputs.LEVER_AHEAD, Inputs.LEVER_UP);

    public Part {
        numbers = Map.copyOf(numbers);
    }

    /** All parts' numbers together. */
    public static Map<Input, Double> together(Part... parts) {
        Map<Input, Double> all = new HashMap<>();
        Stream.of(parts).forEach(part -> all.putAll(part.numbers));
        return all;
    }

    /**
     * Its numbers as they go on a bike. A bar that says its reach and nothing of its hoods brings them back, or forward,
     * by as much as its reach differs from that of the bar that is there.
     */
    public Map<Input, Double> on(Bike bike) {
        boolean follows = movesHoods(bike);
        if (!follows) {
            return numbers;
        }
        Map<Input, Double> all = new HashMap<>(numbers);
        Point moved = new Point(numbers.get(Inputs.BAR_REACH) - bike.get(Inputs.BAR_REACH), 0)
                .turned(Math.toRadians(bike.get(Inputs.BAR_ROTATION)));
        all.put(Inputs.HOOD_FORWARD, bike.get(Inputs.HOOD_FORWARD) + moved.x());
        all.put(Inputs.HOOD_RISE, bike.get(Inputs.HOOD_RISE) + moved.y());
        return all;
    }

    /** Whether it is a bar whose reach moves the hoods of a bike that says where they are, not where its levers are. */
    public boolean movesHoods(Bike bike) {
        return numbers.containsKey(Inputs.BAR_REACH)
                && Collections.disjoint(numbers.keySet(), HOODS)
                && !bike.has(Inputs.LEVER_AHEAD)
                && bike.has(Inputs.BAR_REACH)
                && numbers.get(Inputs.BAR_REACH) != bike.get(Inputs.BAR_REACH);
    }

    /** Whether it is not what is on a bike. */
    public boolean changes(Bike bike) {
        return numbers.entrySet().stream()
                .anyMatch(number -> Double.compare(bike.get(number.getKey()), number.getValue()) != 0);
    }

    /** Its number, or another where it brings none. */
    public double get(Input input, double otherwise) {
        return numbers.getOrDefault(input, otherwise);
    }

    /** By their numbers, in the order of the keys; one that lacks a number comes first. */
    @Override
    public int compareTo(Part other) {
        return Stream.concat(numbers.keySet().stream(), other.numbers.keySet().stream())
                .distinct()
                .sorted(Comparator.comparing(Input::key))
                .map(input -> Double.compare(
                        get(input, Double.NEGATIVE_INFINITY), other.get(input, Double.NEGATIVE_INFINITY)))
                .filter(order -> order != 0)
                .findFirst()
                .orElse(0);
    }

    /** Sorted, each once. */
    static List<Part> ordered(List<Part> parts) {
        return parts.stream().distinct().sorted().toList();
    }
}
