package rakeline.geometry.parts;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.geometry.Inputs;
import rakeline.quantity.Refusal;

/**
 * The parts that are at hand.
 *
 * @param parts by category, spacers apart, each list in order; a category that is absent stays as on the bike
 * @param bounds limits set in place of those that are declared with a measure
 */
public record Stock(String name, Map<Category, List<Part>> parts, Optional<Spacers> spacers, List<Bound> bounds) {
    private static final List<Part> AS_IT_IS = List.of(Part.AS_IT_IS);

    public Stock {
        Map<Category, List<Part>> ordered = new EnumMap<>(Category.class);
        parts.forEach((category, list) -> ordered.put(category, Part.ordered(list)));
        spacers.ifPresent(stock -> ordered.put(Category.SPACERS, stacked(stock)));
        parts = Map.copyOf(ordered);
        bounds = List.copyOf(bounds);
    }

    /** The choices in a category; as it is on the bike where there are none. */
    public List<Part> choices(Category category) {
        return parts.getOrDefault(category, AS_IT_IS);
    }

    public boolean has(Category category) {
        return parts.containsKey(category);
    }

    /** Spacers allowed below the stem where the fork does not say. */
    public double spacerLimitMm() {
        return spacers.map(Spacers::limitMm).orElse(Spacers.USUAL_LIMIT_MM);
    }

    /**
     * Both together.
     *
     * @throws Refusal where both give spacers
     */
    public Stock and(Stock other) {
        if (spacers.isPresent() && other.spacers.isPresent()) {
            throw new Refusal("the parts \"" + name + "\" and \"" + other.name
                    + "\" both give spacers; accepted is one list of them.");
        }
        Map<Category, List<Part>> both = new EnumMap<>(Category.class);
        both.putAll(parts);
        other.parts.forEach((category, list) -> both.merge(
                category,
                list,
                (one, more) ->
                        Stream.concat(one.stream(), more.stream()).distinct().toList()));
        List<Bound> limits =
                Stream.concat(bounds.stream(), other.bounds.stream()).toList();
        return new Stock(name + " and " + other.name, both, spacers.or(other::spacers), limits);
    }

    /** How many combinations there are; as a number that cannot overflow. */
    public double combinations() {
        return parts.values().stream().mapToDouble(List::size).reduce(1, (all, size) -> all * size);
    }

    /** One line: the name, and how many of each kind. */
    @Override
    public String toString() {
        return name + " · "
                + Stream.of(Category.values())
                        .filter(this::has)
                        .map(category -> choices(category).size() + " " + category.word())
                        .collect(Collectors.joining(" · "));
    }

    private static List<Part> stacked(Spacers spacers) {
        return spacers.stacks().keySet().stream()
                .map(height -> new Part(Map.of(Inputs.SPACERS, height)))
                .toList();
    }
}
