package rakeline.shell.rack;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The changes of bikes on the rack that can be undone and done again, one step a cell: what is typed in the same cell
 * without leaving it is one. Never changes.
 */
record RackHistory(List<Step> before, List<Step> after, Optional<String> open) {
    static final RackHistory EMPTY = new RackHistory(List.of(), List.of(), Optional.empty());

    private static final int DEPTH = 500;

    /** A bike before and after a change. */
    record Step(RackRow from, RackRow to) {
        Step reversed() {
            return new Step(to, from);
        }
    }

    /** A step back or forward: what it does, and the history after it. */
    record Move(Step step, RackHistory history) {}

    RackHistory {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /**
     * With a change; none where nothing changes.
     *
     * @param cell changes that carry the same words join, until {@link #pause}
     */
    RackHistory and(RackRow from, RackRow to, String cell) {
        boolean joins = open.equals(Optional.of(cell)) && !before.isEmpty();
        if (joins) {
            Step last = before.get(before.size() - 1);
            List<Step> earlier = allButLast(before);
            return to.equals(last.from())
                    ? new RackHistory(earlier, List.of(), Optional.empty())
                    : new RackHistory(append(earlier, new Step(last.from(), to)), List.of(), open);
        }
        return new RackHistory(append(last(before), new Step(from, to)), List.of(), Optional.of(cell));
    }

    /** Ends the step that is open. */
    RackHistory pause() {
        return new RackHistory(before, after, Optional.empty());
    }

    Optional<Move> undo() {
        return before.isEmpty()
                ? Optional.empty()
                : Optional.of(move(before.get(before.size() - 1).reversed(), allButLast(before), before, true));
    }

    Optional<Move> redo() {
        return after.isEmpty()
                ? Optional.empty()
                : Optional.of(move(after.get(after.size() - 1), allButLast(after), after, false));
    }

    private Move move(Step step, List<Step> left, List<Step> from, boolean back) {
        Step moved = from.get(from.size() - 1);
        return new Move(
                step,
                back
                        ? new RackHistory(left, append(after, moved), Optional.empty())
                        : new RackHistory(append(before, moved), left, Optional.empty()));
    }

    /** The same steps of a bike that has another id by now. */
    RackHistory moved(String oldId, RackRow now) {
        return new RackHistory(
                moved(before, oldId, now),
                moved(after, oldId, now),
                open.map(cell -> cell.startsWith(oldId + " ") ? now.id() + cell.substring(oldId.length()) : cell));
    }

    private static List<Step> moved(List<Step> steps, String oldId, RackRow now) {
        return steps.stream()
                .map(step -> step.from().id().equals(oldId)
                        ? new Step(placed(step.from(), now), placed(step.to(), now))
                        : step)
                .toList();
    }

    private static RackRow placed(RackRow row, RackRow now) {
        return new RackRow(now.id(), now.path(), now.place(), row.name(), row.bike(), row.waiting(), row.trouble());
    }

    private static List<Step> append(List<Step> steps, Step step) {
        return Stream.concat(steps.stream(), Stream.of(step)).toList();
    }

    private static List<Step> allButLast(List<Step> steps) {
        return steps.subList(0, steps.size() - 1);
    }

    private static List<Step> last(List<Step> steps) {
        return steps.subList(Math.max(0, steps.size() - DEPTH + 1), steps.size());
    }
}
