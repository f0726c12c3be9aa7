package rakeline.shell.rack;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What was done on the rack and can be undone and done again. Never changes. */
record RackHistory(List<Step> before, List<Step> after) {
    static final RackHistory EMPTY = new RackHistory(List.of(), List.of());

    private static final int DEPTH = 500;

    /** One thing that was done. */
    sealed interface Step {
        boolean isOf(String id);

        Step reversed();
    }

    /** A bike's numbers before and after. */
    record Change(String id, BikeDraft from, BikeDraft to) implements Step {
        @Override
        public boolean isOf(String other) {
            return id.equals(other);
        }

        @Override
        public Change reversed() {
            return new Change(id, to, from);
        }
    }

    /**
     * Bikes put on the rack, or taken off.
     *
     * @param listed those that the page names as long as they are on
     */
    record Presence(Set<String> ids, Set<String> listed, boolean isOn) implements Step {
        Presence {
            ids = Set.copyOf(ids);
            listed = Set.copyOf(listed);
        }

        @Override
        public boolean isOf(String id) {
            return ids.contains(id);
        }

        @Override
        public Presence reversed() {
            return new Presence(ids, listed, !isOn);
        }
    }

    /** A step to be taken, and the history after it. */
    record Move(Step step, RackHistory history) {}

    RackHistory {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    RackHistory and(Step step) {
        return new RackHistory(
                append(before.subList(Math.max(0, before.size() - DEPTH + 1), before.size()), step), List.of());
    }

    Optional<Move> undo() {
        return last(before)
                .map(step -> new Move(step.reversed(), new RackHistory(allButLast(before), append(after, step))));
    }

    Optional<Move> redo() {
        return last(after).map(step -> new Move(step, new RackHistory(append(before, step), allButLast(after))));
    }

    boolean names(String id) {
        return Stream.concat(before.stream(), after.stream()).anyMatch(step -> step.isOf(id));
    }

    /** Without what was done to bikes that are gone. */
    RackHistory without(Predicate<String> gone) {
        return new RackHistory(without(before, gone), without(after, gone));
    }

    /** Without the taking off of a bike, which was put back since. */
    RackHistory putBack(String id) {
        return new RackHistory(withoutPresence(before, id, false), withoutPresence(after, id, true));
    }

    private static List<Step> withoutPresence(List<Step> steps, String id, boolean isOn) {
        return steps.stream()
                .flatMap(step -> step instanceof Presence presence && presence.isOn() == isOn
                        ? without(presence, id::equals)
                        : Stream.of(step))
                .toList();
    }

    private static List<Step> without(List<Step> steps, Predicate<String> gone) {
        return steps.stream().flatMap(step -> without(step, gone)).toList();
    }

    private static Stream<Step> without(Step step, Predicate<String> gone) {
        if (step instanceof Change change) {
            return gone.test(change.id()) ? Stream.empty() : Stream.of(step);
        }
        return without((Presence) step, gone);
    }

    private static Stream<Step> without(Presence step, Predicate<String> gone) {
        List<String> left = step.ids().stream().filter(gone.negate()).toList();
        return left.isEmpty() ? Stream.empty() : Stream.of(new Presence(Set.copyOf(left), step.listed(), step.isOn()));
    }

    private static Optional<Step> last(List<Step> steps) {
        return steps.isEmpty() ? Optional.empty() : Optional.of(steps.get(steps.size() - 1));
    }

    private static List<Step> append(List<Step> steps, Step step) {
        return Stream.concat(steps.stream(), Stream.of(step)).toList();
    }

    private static List<Step> allButLast(List<Step> steps) {
        return steps.subList(0, steps.size() - 1);
    }
}
