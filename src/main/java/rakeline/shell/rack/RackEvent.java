package rakeline.shell.rack;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import rakeline.desk.RackView;
import rakeline.geometry.Bike;
import rakeline.quantity.Input;

/** What happens to the rack: a deed of the person's, another page, an answer of the disk. */
sealed interface RackEvent {
    /** A cell is typed in; what is typed counts once the cell is left. */
    record Typed(String id, String key, String text) implements RackEvent {}

    /** Typing rests, the cell still open. */
    record Rested() implements RackEvent {}

    /** A cell is left; what was typed in it counts. */
    record Left(String id, String key) implements RackEvent {}

    /** A cell is left as it was before it was typed in. */
    record Cancelled(String id, String key) implements RackEvent {}

    /** A hand on a drawing moves a number, which counts once the hand lets go. */
    record Dragged(String id, String key, double value) implements RackEvent {}

    /** The hand lets go. */
    record Released() implements RackEvent {}

    /**
     * A block of cells, copied from a spreadsheet, is pasted from a cell on.
     *
     * @param row from 0, of those on the rack
     * @param column from 0
     * @param block lines of fields parted by tabs
     */
    record Pasted(int row, int column, String block) implements RackEvent {}

    /** A bike is called otherwise. */
    record Renamed(String id, String name) implements RackEvent {}

    /**
     * A bike that has no file yet.
     *
     * @param waiting numbers that no file can hold yet
     */
    record NewBike(String name, Optional<Bike> bike, Map<Input, Double> waiting) {
        static NewBike of(Bike bike) {
            return new NewBike(bike.name(), Optional.of(bike), Map.of());
        }
    }

    /** New bikes come onto the rack; those that are whole get files. */
    record Put(List<NewBike> bikes) implements RackEvent {}

    /** Bikes of these paths come onto the rack of the page. */
    record Added(List<String> paths) implements RackEvent {}

    /** Bikes are taken off the rack; their files stay. */
    record TakenOff(Set<String> ids) implements RackEvent {}

    /** The last thing done is undone. */
    record Undone() implements RackEvent {}

    /** What was undone last is done again. */
    record Redone() implements RackEvent {}

    /** Something is chosen. */
    record Chosen(UnaryOperator<RackChoices> change) implements RackEvent {}

    /**
     * The page as it is now.
     *
     * @param isAnother whether it was just opened
     */
    record PageShown(RackState.Page page, boolean isAnother) implements RackEvent {}

    /** What was kept at the last start. */
    record Recalled(RackView view) implements RackEvent {}

    /** Other programs may have changed files, or a disk may be there again. */
    record LookedAround() implements RackEvent {}

    /** An answer of the disk to a {@link RackEffect.Read}. */
    record WasRead(int number, List<RackEffect.Read.Answer> answers) implements RackEvent {}

    /** An answer of the disk: a bike stands in its file. */
    record WasWritten(String id, RackBike.Filed filed) implements RackEvent {}

    /**
     * An answer of the disk: a bike stands in a file that was not there before.
     *
     * @param asked the name that was asked for
     */
    record WasCreated(String id, String asked, RackBike.Filed filed) implements RackEvent {}

    /** An answer of the disk: nothing was written, since another program has changed the file. */
    record WasOvertaken(String id, RackBike.Filed theirs) implements RackEvent {}

    /**
     * An answer of the disk: a file is called otherwise by now.
     *
     * @param asked the name that was asked for
     */
    record WasMoved(String id, String asked, RackBike.Place place) implements RackEvent {}

    /** An answer of the disk: it could not be done. */
    record Failed(RackEffect.OnFile effect, String why) implements RackEvent {}
}
