package rakeline.shell.rack;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rakeline.desk.Stamp;
import rakeline.geometry.Bike;
import rakeline.quantity.Input;

/**
 * A bike at hand: its numbers as typed, and what is known of its file. Never changes.
 *
 * @param id by which the rack knows it as long as the program runs
 * @param draft its numbers
 * @param filed how it stands in a file
 * @param presence whether it is on the rack, and whether the page names it
 * @param open the keys of its cells that are typed in and were not left
 * @param isTrial whether it is a copy that was made to try something on
 */
public record RackBike(String id, BikeDraft draft, Filed filed, Presence presence, Set<String> open, boolean isTrial) {
    /**
     * A bike's own file.
     *
     * @param stamp of what was read from it or written to it last
     */
    record Place(Path file, Stamp stamp) {
        String name() {
            return String.valueOf(file.getFileName());
        }
    }

    /**
     * How a bike stands in a file.
     *
     * @param path as a page names it; empty for a bike that has no file yet
     * @param place its own file; none for one that comes with the program, or has no file yet
     * @param stored what the file holds, as far as is known
     * @param trouble why the file cannot be read, or empty
     * @param failure why what was typed could not be written, or empty
     */
    record Filed(String path, Optional<Place> place, Optional<Bike> stored, String trouble, String failure) {
        /** What is said of a bike while its file is read for the first time. */
        static final String BEING_READ = "It is being read.";

        static final Filed NOWHERE = new Filed("", Optional.empty(), Optional.empty(), "", "");

        /** A path that leads to no bike. */
        static Filed unread(String path, String why) {
            return new Filed(path, Optional.empty(), Optional.empty(), why, "");
        }

        Filed at(String newPath) {
            return new Filed(newPath, place, stored, trouble, failure);
        }

        Filed failing(String why) {
            return new Filed(path, place, stored, trouble, why);
        }

        /** What the file is known by: itself, or the path of a bike that comes with the program. */
        String key() {
            return place.map(own -> own.file().toString()).orElse(path);
        }
    }

    /** Whether a bike is on the rack. */
    enum Presence {
        /** On it, and named by the page. */
        LISTED,
        /** On it; the page does not name it. */
        HERE,
        /** Taken off: kept for an undo, or until it is written. */
        OFF,
        /** Not put on after all: kept for a redo, never written. */
        UNDONE
    }

    public RackBike {
        open = Set.copyOf(open);
    }

    RackBike with(BikeDraft changed) {
        return new RackBike(id, changed, filed, presence, open, isTrial);
    }

    RackBike with(Filed now) {
        return new RackBike(id, draft, now, presence, open, isTrial);
    }

    RackBike with(Presence now) {
        return new RackBike(id, draft, filed, now, open, isTrial);
    }

    RackBike opened(Set<String> keys) {
        return new RackBike(id, draft, filed, presence, keys, isTrial);
    }

    /** A copy to try something on. */
    RackBike trial() {
        return new RackBike(id, draft, filed, presence, open, true);
    }

    public String name() {
        return draft.name();
    }

    Optional<Bike> bike() {
        return draft.bike();
    }

    Map<Input, Double> waiting() {
        return draft.waiting();
    }

    String path() {
        return filed.path();
    }

    Optional<Place> place() {
        return filed.place();
    }

    String trouble() {
        return filed.trouble();
    }

    boolean isOn() {
        return presence == Presence.LISTED || presence == Presence.HERE;
    }

    /** Whether it comes with the program, so that a change needs a copy. */
    boolean isBundled() {
        return place().isEmpty() && !path().isEmpty() && filed.stored().isPresent();
    }

    /** Whether its file is read for the first time. */
    boolean isBeingRead() {
        return trouble().equals(Filed.BEING_READ);
    }

    /** Whether its file cannot be read, or was not yet. */
    boolean isUnread() {
        return !trouble().isEmpty();
    }

    /** Whether it stands otherwise than its file. */
    boolean isAhead() {
        return (!isUnread() && !bike().equals(filed.stored())) || isMisnamed();
    }

    /** Whether it stands otherwise than its file, and can be written. */
    boolean isUnsaved() {
        return bike().isPresent() && isAhead();
    }

    /** Whether its file is to be called otherwise. */
    boolean isMisnamed() {
        return place().filter(own -> !draft.fileName().isEmpty() && !own.name().equals(draft.fileName()))
                .isPresent();
    }

    double value(RackColumn column) {
        return draft.value(column);
    }

    boolean isWaiting(RackColumn column) {
        return draft.isWaiting(column);
    }

    boolean isGiven(RackColumn column) {
        return draft.isGiven(column);
    }

    List<Input> missing() {
        return draft.missing();
    }
}
