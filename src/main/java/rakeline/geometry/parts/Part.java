package rakeline.geometry.parts;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rakeline.quantity.Input;

/**
 * A stock part.
 *
 * @param numbers what it puts in place of the bike's own; nothing for what stays as it is on the bike
 */
public record Part(Map<Input, Double> numbers) implements Comparable<Part> {
    /** Whatever is on the bike. */
    public static final Part AS_IT_IS = new Part(Map.of());

    public Part {
        numbers = Map.copyOf(numbers);
    }

    /** All parts' numbers together. */
    public static Map<Input, Double> together(Part... parts) {
        Map<Input, Double> all = new HashMap<>();
        Stream.of(parts).forEach(part -> all.putAll(part.numbers));
        return all;
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
