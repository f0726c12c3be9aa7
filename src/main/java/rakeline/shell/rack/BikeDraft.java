package rakeline.shell.rack;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import rakeline.geometry.Bike;
import rakeline.geometry.Provenance;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/**
 * A bike's numbers as they were typed, whole or not. Never changes.
 *
 * @param bike none while numbers are missing without which there is no bicycle
 * @param waiting numbers typed that no file can hold yet, because their groups lack others
 * @param fileName of the file that it belongs in; empty for the one that it has
 */
record BikeDraft(String name, Optional<Bike> bike, Map<Input, Double> waiting, String fileName) {
    private static final Set<Provenance.Origin> KEPT = Set.of(Provenance.Origin.CHARTED, Provenance.Origin.MEASURED);

    BikeDraft {
        waiting = Collections.unmodifiableMap(new LinkedHashMap<>(waiting));
    }

    /** A whole bike. */
    static BikeDraft of(Bike bike) {
        return new BikeDraft(bike.name(), Optional.of(bike), Map.of(), "");
    }

    /** A bike begun anew, without any number. */
    static BikeDraft begun(String name) {
        return new BikeDraft(name, Optional.empty(), Map.of(), "");
    }

    BikeDraft withBike(Bike changed) {
        return new BikeDraft(changed.name(), Optional.of(changed), waiting, fileName);
    }

    BikeDraft withWaiting(Map<Input, Double> numbers) {
        return new BikeDraft(name, bike, numbers, fileName);
    }

    BikeDraft named(String newName) {
        return new BikeDraft(newName, bike.map(some -> some.named(newName)), waiting, fileName);
    }

    BikeDraft in(String newFileName) {
        return new BikeDraft(name, bike, waiting, newFileName);
    }

    /** The number typed or given, else its default; NaN where there is none. */
    double value(RackColumn column) {
        Input first = column.setting().inputs().get(0);
        return waiting.containsKey(first)
                ? waiting.get(first)
                : bike.map(some -> some.get(first)).orElse(Double.NaN);
    }

    boolean isWaiting(RackColumn column) {
        return column.setting().inputs().stream().anyMatch(waiting::containsKey);
    }

    /** Whether the number was given; else it is a default, or there is none. */
    boolean isGiven(RackColumn column) {
        return isWaiting(column)
                || bike.filter(some ->
                                some.given().has(column.setting().inputs().get(0)))
                        .isPresent();
    }

    /** Whether any of its numbers was measured. */
    boolean isMeasured() {
        return bike.stream()
                .flatMap(some -> some.provenance().values().stream())
                .anyMatch(one -> one.from().equals(Optional.of(Provenance.Origin.MEASURED)));
    }

    /** The first number of each kind that is still missing before everything typed can stand in a file. */
    List<Input> missing() {
        return new Groups(bike, waiting).missing().toList();
    }

    /**
     * With a cell as it was typed; an empty one takes the number away.
     *
     * @param lengths the unit of a length that brings none
     * @throws Refusal in one sentence where it cannot stand there
     */
    BikeDraft typed(RackColumn column, String text, LengthUnit lengths) {
        if (!column.isTyped()) {
            throw new Refusal(column.quantity().label() + " is computed; change a number that it follows from.");
        }
        return Typed.read(text, column, lengths)
                .map(number -> type(column, number))
                .orElseGet(() -> clear(column));
    }

    /**
     * With a number typed: redrawn, that number as typed and everything else as it was.
     *
     * @throws Refusal where the shape cannot close
     */
    BikeDraft type(RackColumn column, Typed typed) {
        Map<Input, Double> all = new LinkedHashMap<>(waiting);
        column.setting().inputs().forEach(input -> all.put(input, typed.value()));
        BikeDraft settled = settle(all);
        return settled.bike
                .filter(some -> !settled.isWaiting(column))
                .map(some -> settled.withBike(known(some, column, typed)))
                .orElse(settled);
    }

    private BikeDraft settle(Map<Input, Double> all) {
        Groups groups = new Groups(bike, all);
        if (!groups.makesBike()) {
            return withWaiting(all);
        }
        Map<Input, Double> whole = groups.whole();
        Map<Input, Double> left = new LinkedHashMap<>(all);
        left.keySet().removeAll(whole.keySet());
        Bike changed = bike.map(some -> some.redraw(whole))
                .orElseGet(() -> Bike.of(name, Entries.none().with(whole), Set.of(), Map.of()));
        return withBike(changed).withWaiting(left);
    }

    /** What is typed with an uncertainty was measured; what was assumed or solved is so no longer. */
    private static Bike known(Bike bike, RackColumn column, Typed typed) {
        Map<String, Provenance> provenance = new HashMap<>(bike.provenance());
        for (Input input : column.setting().inputs()) {
            if (!Double.isNaN(typed.uncertaintyOrNaN())) {
                provenance.put(
                        input.key(), new Provenance(Optional.of(Provenance.Origin.MEASURED), typed.uncertaintyOrNaN()));
            } else if (!provenance.getOrDefault(input.key(), Provenance.of(Provenance.Origin.CHARTED)).from().stream()
                    .allMatch(KEPT::contains)) {
                provenance.remove(input.key());
            }
        }
        return Bike.of(bike.name(), bike.given(), bike.groups(), provenance);
    }

    /**
     * With a number taken away, so that its default counts.
     *
     * @throws Refusal where the bike cannot be without it
     */
    private BikeDraft clear(RackColumn column) {
        Map<Input, Double> left = new LinkedHashMap<>(waiting);
        column.setting().inputs().forEach(left::remove);
        BikeDraft without = withWaiting(left);
        return bike.map(some -> without.withBike(cleared(some, column))).orElse(without);
    }

    private static Bike cleared(Bike bike, RackColumn column) {
        Map<Input, Double> changes = new HashMap<>();
        Map<String, Provenance> provenance = new HashMap<>(bike.provenance());
        for (Input input : column.setting().inputs()) {
            if (bike.given().has(input)) {
                checkOptional(input, column);
                changes.put(input, Double.NaN);
                provenance.remove(input.key());
            }
        }
        return changes.isEmpty()
                ? bike
                : Bike.of(bike.name(), bike.given().with(changes), new HashSet<>(bike.groups()), provenance);
    }

    private static void checkOptional(Input input, RackColumn column) {
        if (input.presence() instanceof Input.Presence.Required) {
            throw new Refusal(column.quantity().label() + " is empty; a bike with the group " + input.group()
                    + " cannot be without it.");
        }
    }

    /**
     * What was changed here from one version to another, done to this one, which was changed elsewhere meanwhile.
     *
     * @throws Refusal where both together are no bicycle
     */
    BikeDraft changed(BikeDraft from, BikeDraft to) {
        if (equals(from)) {
            return to;
        }
        Optional<Bike> both = merged(from.bike, to.bike);
        String newName = from.name.equals(to.name) ? name : to.name;
        return new BikeDraft(
                newName,
                both.map(some -> some.named(newName)),
                merged(from.waiting, to.waiting, waiting),
                from.fileName.equals(to.fileName) ? fileName : to.fileName);
    }

    private Optional<Bike> merged(Optional<Bike> from, Optional<Bike> to) {
        if (from.isEmpty() || to.isEmpty() || bike.isEmpty() || bike.equals(from)) {
            return from.equals(to) ? bike : to;
        }
        return Optional.of(merged(from.get(), to.get(), bike.get()));
    }

    private static Bike merged(Bike from, Bike to, Bike here) {
        Map<Input, Double> changes = new HashMap<>();
        for (Input input : rakeline.geometry.Inputs.all()) {
            if (Double.compare(from.given().get(input), to.given().get(input)) != 0) {
                changes.put(input, to.given().get(input));
            }
        }
        Set<String> groups = new HashSet<>(here.groups());
        from.groups().stream().filter(group -> !to.groups().contains(group)).forEach(groups::remove);
        to.groups().stream().filter(group -> !from.groups().contains(group)).forEach(groups::add);
        return Bike.of(
                here.name(),
                here.given().with(changes),
                groups,
                merged(from.provenance(), to.provenance(), here.provenance()));
    }

    private static <K, V> Map<K, V> merged(Map<K, V> from, Map<K, V> to, Map<K, V> here) {
        Map<K, V> merged = new LinkedHashMap<>(here);
        from.keySet().stream().filter(key -> !to.containsKey(key)).forEach(merged::remove);
        to.forEach((key, value) -> {
            if (!Objects.equals(value, from.get(key))) {
                merged.put(key, value);
            }
        });
        return merged;
    }
}
