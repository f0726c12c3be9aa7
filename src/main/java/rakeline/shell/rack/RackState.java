package rakeline.shell.rack;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.catalogue.BikeWriter;
import rakeline.desk.RackView;
import rakeline.geometry.Bike;
import rakeline.quantity.Refusal;

/**
 * All that the rack is at one moment: bikes as typed and as they stand in files, what is typed in a cell, what can be
 * undone, what was chosen, and what is on its way to or from the disk. Never changes; {@link RackTransitions} leads from
 * one to the next.
 *
 * @param bikes on the rack in order, and those taken off that an undo or a write still needs
 * @param typing the cells that are typed in or dragged and not left
 * @param page what the page says of the rack
 * @param reading the number of the last read that was asked for; 0 before any
 * @param writing what is being done to a file
 * @param unmet what was kept of bikes that have not been read since
 * @param kept as it was given to be kept last; none before what was kept at the last start is known
 * @param ids how many bikes have been given an id
 */
public record RackState(
        List<RackBike> bikes,
        List<OpenCell> typing,
        RackHistory history,
        RackChoices choices,
        Page page,
        int reading,
        Optional<RackEffect.OnFile> writing,
        List<RackView.Unfinished> unmet,
        Optional<RackView> kept,
        int ids) {
    /**
     * A cell that is typed in or dragged and was not left.
     *
     * @param isDragged whether a hand on a drawing moves it; nothing of that is kept
     */
    record OpenCell(String id, String key, String text, boolean isDragged) {
        boolean isAt(String otherId, String otherKey) {
            return id.equals(otherId) && key.equals(otherKey);
        }
    }

    /**
     * What the page says.
     *
     * @param folders where paths are looked for, the page's own first; new bikes go into the last, the user's own
     * @param rack the paths that it names
     */
    record Page(List<Path> folders, List<String> rack) {
        Page {
            folders = List.copyOf(folders);
            rack = List.copyOf(rack);
        }
    }

    public RackState {
        bikes = List.copyOf(bikes);
        typing = List.copyOf(typing);
        unmet = List.copyOf(unmet);
    }

    /** No bikes, the usual columns, millimetres. */
    static RackState empty() {
        return new RackState(
                List.of(),
                List.of(),
                RackHistory.EMPTY,
                RackChoices.first(),
                new Page(List.of(), List.of()),
                0,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                0);
    }

    RackState withBikes(List<RackBike> now) {
        return new RackState(now, typing, history, choices, page, reading, writing, unmet, kept, ids);
    }

    RackState withTyping(List<OpenCell> cells) {
        return new RackState(bikes, cells, history, choices, page, reading, writing, unmet, kept, ids);
    }

    RackState with(RackHistory now) {
        return new RackState(bikes, typing, now, choices, page, reading, writing, unmet, kept, ids);
    }

    RackState with(RackChoices now) {
        return new RackState(bikes, typing, history, now, page, reading, writing, unmet, kept, ids);
    }

    RackState with(Page now) {
        return new RackState(bikes, typing, history, choices, now, reading, writing, unmet, kept, ids);
    }

    RackState reading(int number) {
        return new RackState(bikes, typing, history, choices, page, number, writing, unmet, kept, ids);
    }

    /** Whether something is being done to a bike's file. */
    boolean isWriting(RackBike bike) {
        return writing.filter(effect -> effect.id().equals(bike.id())).isPresent();
    }

    RackState writing(Optional<RackEffect.OnFile> effect) {
        return new RackState(bikes, typing, history, choices, page, reading, effect, unmet, kept, ids);
    }

    RackState withUnmet(List<RackView.Unfinished> now) {
        return new RackState(bikes, typing, history, choices, page, reading, writing, now, kept, ids);
    }

    RackState kept(RackView view) {
        return new RackState(bikes, typing, history, choices, page, reading, writing, unmet, Optional.of(view), ids);
    }

    /** With another bike behind the others, which gets the next id. */
    RackState and(UnaryOperator<RackBike> made) {
        RackBike bare = new RackBike(
                "bike " + (ids + 1),
                BikeDraft.begun(""),
                RackBike.Filed.NOWHERE,
                RackBike.Presence.HERE,
                Set.of(),
                false);
        return new RackState(
                Stream.concat(bikes.stream(), Stream.of(made.apply(bare))).toList(),
                typing,
                history,
                choices,
                page,
                reading,
                writing,
                unmet,
                kept,
                ids + 1);
    }

    /** The id of the bike that was made last. */
    String lastId() {
        return "bike " + ids;
    }

    public List<RackColumn> columns() {
        return choices.columns();
    }

    public LengthUnit lengths() {
        return choices.lengths();
    }

    /** The bikes on the rack as they are shown: with what is typed in cells that were not left, as far as it can stand. */
    List<RackBike> rows() {
        return bikes.stream().filter(RackBike::isOn).map(this::shown).toList();
    }

    private RackBike shown(RackBike bike) {
        List<OpenCell> open =
                typing.stream().filter(cell -> cell.id().equals(bike.id())).toList();
        RackBike shown = bike.opened(open.stream().map(OpenCell::key).collect(Collectors.toSet()));
        for (OpenCell cell : open) {
            shown = shown.with(asFarAsItStands(shown.draft(), cell));
        }
        return shown;
    }

    private BikeDraft asFarAsItStands(BikeDraft draft, OpenCell cell) {
        try {
            return draft.typed(RackColumn.of(cell.key()), cell.text(), lengths());
        } catch (Refusal notYet) {
            return draft;
        }
    }

    Optional<RackBike> bike(String id) {
        return bikes.stream().filter(bike -> bike.id().equals(id)).findFirst();
    }

    /** The same where there is no such bike. */
    RackState with(String id, UnaryOperator<RackBike> change) {
        return withBikes(bikes.stream()
                .map(bike -> bike.id().equals(id) ? change.apply(bike) : bike)
                .toList());
    }

    Optional<OpenCell> open(String id, String key) {
        return typing.stream().filter(cell -> cell.isAt(id, key)).findFirst();
    }

    RackState closed(String id, String key) {
        return withTyping(typing.stream().filter(cell -> !cell.isAt(id, key)).toList());
    }

    boolean canUndo() {
        return history.undo().isPresent();
    }

    boolean canRedo() {
        return history.redo().isPresent();
    }

    /** The number in a cell as it is put into the field that it is typed in. */
    String shown(RackBike bike, RackColumn column) {
        double value = bike.isGiven(column) ? bike.value(column) : Double.NaN;
        return Double.isNaN(value) ? "" : column.show(value, lengths());
    }

    /** A name that no bike of the rack has: this one, or with a number behind it. */
    String freshName(String name) {
        Set<String> taken = bikes.stream().map(RackBike::name).collect(Collectors.toCollection(HashSet::new));
        String free = name;
        for (int i = 2; taken.contains(free); i++) {
            free = name + " " + i;
        }
        return free;
    }

    /** The path by which the page could name a bike; none for one that it cannot reach. */
    Optional<String> pathOf(RackBike bike) {
        if (bike.place().isEmpty()) {
            return bike.isBundled() ? Optional.of(bike.path()) : Optional.empty();
        }
        Path file = bike.place().get().file().toAbsolutePath().normalize();
        return page.folders().stream()
                .map(folder -> folder.toAbsolutePath().normalize())
                .filter(file::startsWith)
                .findFirst()
                .map(folder -> folder.relativize(file).toString().replace('\\', '/'));
    }

    /** The rack as it is to be kept from one start to the next. */
    RackView view() {
        List<RackView.Unfinished> unfinished = Stream.concat(
                        bikes.stream().filter(this::isUnfinished).map(this::unfinished), unmet.stream())
                .toList();
        List<String> onRack = bikes.stream()
                .filter(RackBike::isOn)
                .map(bike -> bike.filed().key())
                .filter(key -> !key.isEmpty())
                .toList();
        return new RackView(
                columns().stream().map(RackColumn::key).toList(),
                lengths().symbol(),
                false,
                choices.kept(),
                onRack,
                unfinished);
    }

    private boolean isUnfinished(RackBike bike) {
        return isToBeWritten(bike) || (bike.filed().key().isEmpty() ? bike.isOn() : isHalfTyped(bike));
    }

    /** Whether its file holds something else, or will once what is being written stands there. */
    private boolean isToBeWritten(RackBike bike) {
        return bike.bike().isPresent()
                && (bike.isUnsaved() || isWriting(bike))
                && bike.presence() != RackBike.Presence.UNDONE;
    }

    /** What its file holds, and what it will hold once what is being written stands there. */
    private Stream<Bike> before(RackBike bike) {
        return Stream.concat(
                        bike.filed().stored().stream(),
                        writing
                                .filter(effect -> effect.id().equals(bike.id()))
                                .map(RackEffect.OnFile::content)
                                .stream())
                .distinct();
    }

    /** Whether something was typed on it that no file holds. */
    boolean isHalfTyped(RackBike bike) {
        return !bike.waiting().isEmpty() || !typed(bike).isEmpty();
    }

    private Map<String, String> typed(RackBike bike) {
        Map<String, String> typed = new LinkedHashMap<>();
        typing.stream()
                .filter(cell -> cell.id().equals(bike.id()) && !cell.isDragged())
                .forEach(cell -> typed.put(cell.key(), cell.text()));
        return typed;
    }

    /** What is kept of a bike. */
    RackView.Unfinished unfinished(RackBike bike) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        bike.waiting().forEach((input, value) -> numbers.put(input.key(), value));
        return new RackView.Unfinished(
                bike.filed().key(),
                bike.name(),
                numbers,
                typed(bike),
                isToBeWritten(bike) ? text(bike.bike().orElseThrow()) : "",
                isToBeWritten(bike)
                        ? before(bike)
                                .map(RackState::text)
                                .filter(text -> !text.isEmpty())
                                .toList()
                        : List.of());
    }

    /** What no file can hold cannot be kept either; that is said when it is to be written. */
    private static String text(Bike bike) {
        try {
            return BikeWriter.text(bike);
        } catch (Refusal noFile) {
            return "";
        }
    }
}
