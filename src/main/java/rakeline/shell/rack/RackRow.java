package rakeline.shell.rack;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rakeline.geometry.Bike;
import rakeline.geometry.Provenance;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/**
 * A bike at hand. Never changes.
 *
 * @param id by which the rack knows it: its path, or a number for one that has no file yet
 * @param path as in the worksheet; empty for one that has no file yet
 * @param place its own file; none for one that comes with the program, or has no file yet
 * @param bike none while numbers are missing without which there is no bicycle
 * @param waiting numbers typed that no file can hold yet, because their groups lack others
 * @param trouble why its file cannot be read, or empty
 */
public record RackRow(
        String id,
        String path,
        Optional<Place> place,
        String name,
        Optional<Bike> bike,
        Map<Input, Double> waiting,
        String trouble) {
    private static final Set<Provenance.Origin> KEPT = Set.of(Provenance.Origin.CHARTED, Provenance.Origin.MEASURED);

    public RackRow {
        waiting = Collections.unmodifiableMap(new LinkedHashMap<>(waiting));
    }

    /** A bike read from a file, or from what comes with the program. */
    static RackRow of(String path, Optional<Place> place, Bike bike) {
        return new RackRow(path, path, place, bike.name(), Optional.of(bike), Map.of(), "");
    }

    /** A path that leads to no bike. */
    static RackRow unread(String path, String trouble) {
        return new RackRow(path, path, Optional.empty(), path, Optional.empty(), Map.of(), trouble);
    }

    /** A bike begun anew, without any number. */
    static RackRow begun(String id, String name) {
        return new RackRow(id, "", Optional.empty(), name, Optional.empty(), Map.of(), "");
    }

    /** Whether it comes with the program, so that a change needs a copy. */
    boolean isBundled() {
        return place.isEmpty() && bike.isPresent() && !path.isEmpty();
    }

    /** Whether its file cannot be read. */
    boolean isUnread() {
        return !trouble.isEmpty();
    }

    RackRow withBike(Bike changed) {
        return new RackRow(id, path, place, changed.name(), Optional.of(changed), waiting, trouble);
    }

    RackRow withWaiting(Map<Input, Double> numbers) {
        return new RackRow(id, path, place, name, bike, numbers, trouble);
    }

    RackRow named(String newName) {
        return new RackRow(id, path, place, newName, bike.map(some -> some.named(newName)), waiting, trouble);
    }

    /** The same bike in a file. */
    RackRow at(String newPath, Place newPlace) {
        return new RackRow(newPath, newPath, Optional.of(newPlace), name, bike, waiting, trouble);
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

    /** The first number of each kind that is still missing before everything typed can stand in a file. */
    List<Input> missing() {
        return new Groups(bike, waiting).missing().toList();
    }

    /**
     * With a number typed: redrawn, that number as typed and everything else as it was.
     *
     * @throws Refusal where the shape cannot close
     */
    RackRow type(RackColumn column, Typed typed) {
        Map<Input, Double> all = new LinkedHashMap<>(waiting);
        column.setting().inputs().forEach(input -> all.put(input, typed.value()));
        RackRow settled = settle(all);
        return settled.bike
                .filter(some -> !settled.isWaiting(column))
                .map(some -> settled.withBike(known(some, column, typed)))
                .orElse(settled);
    }

    private RackRow settle(Map<Input, Double> all) {
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
    RackRow clear(RackColumn column) {
        Map<Input, Double> left = new LinkedHashMap<>(waiting);
        column.setting().inputs().forEach(left::remove);
        RackRow without = withWaiting(left);
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
}
