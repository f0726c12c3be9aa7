package rakeline.shell.rack;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.quantity.Input;

/** Groups of a bike file, which are there whole or not at all: what of the numbers typed so far makes whole ones. */
record Groups(Optional<Bike> bike, Map<Input, Double> typed) {
    Groups {
        typed = Map.copyOf(typed);
    }

    /** The numbers whose groups are whole with what the bike has. */
    Map<Input, Double> whole() {
        return typed.entrySet().stream()
                .filter(entry -> isWhole(entry.getKey().group()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** Whether there are all numbers without which there is no bicycle. */
    boolean makesBike() {
        return bike.isPresent() || Bike.NEEDED_GROUPS.stream().allMatch(this::isWhole);
    }

    /** What is still missing before everything typed can stand in a file, in the order of the declarations. */
    Stream<Input> missing() {
        Set<String> begun = typed.keySet().stream()
                .flatMap(input -> Stream.of(input.group(), outer(input.group())))
                .collect(Collectors.toSet());
        return Inputs.all().stream()
                .filter(input ->
                        begun.contains(input.group()) || (bike.isEmpty() && Bike.NEEDED_GROUPS.contains(input.group())))
                .filter(this::isMissing);
    }

    private boolean isWhole(String group) {
        return Inputs.all().stream()
                .filter(input -> input.group().equals(group) || input.group().equals(outer(group)))
                .noneMatch(this::isMissing);
    }

    private boolean isMissing(Input input) {
        return input.presence() instanceof Input.Presence.Required
                && !typed.containsKey(input)
                && bike.filter(some -> some.has(input)).isEmpty();
    }

    private static String outer(String group) {
        int dot = group.indexOf('.');
        return dot < 0 ? group : group.substring(0, dot);
    }
}
