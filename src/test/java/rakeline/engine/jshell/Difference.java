package rakeline.engine.jshell;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import rakeline.engine.Outcome;
import rakeline.engine.State;

/** Whether a page stands as a run from the top has it. */
final class Difference {
    private Difference() {}

    /**
     * Every row that says fresh must stand so; where nothing was given up, all others too. A name that a row shares
     * follows from what the rows above it show, and is left out where some of them do not. So is how a row stands that
     * was broken off, where another says that it needs it.
     */
    static Optional<String> between(List<Outcome> found, List<Outcome> fresh) {
        boolean givenUp = found.stream().anyMatch(outcome -> outcome.state() == State.OUT_OF_DATE);
        Map<String, Outcome> expected = fresh.stream().collect(Collectors.toMap(Outcome::id, Function.identity()));
        Set<String> broken =
                found.stream().filter(Difference::isBrokenOff).map(Outcome::id).collect(Collectors.toSet());
        UnaryOperator<Outcome> compared = outcome -> unnamed(withoutStateOf(broken, outcome), givenUp);
        return found.stream()
                .filter(outcome -> !givenUp || outcome.state() == State.FRESH)
                .filter(outcome -> differs(outcome, expected.get(outcome.id()), compared))
                .findFirst()
                .map(outcome -> outcome + "\ninstead of\n" + expected.get(outcome.id()));
    }

    /** Without what only Java itself says, and without what a row that was broken off had come to. */
    static List<Outcome> withoutJavasWords(List<Outcome> outcomes) {
        return outcomes.stream().map(Difference::withoutJavasWords).toList();
    }

    private static Outcome withoutJavasWords(Outcome outcome) {
        boolean ended = outcome.message().contains("its worker");
        String start = outcome.message().replaceFirst("(?s)\n.*", "");
        boolean ours = outcome.state() != State.FAILED || start.contains("declare");
        boolean broken = outcome.state() == State.STOPPED || ended;
        return new Outcome(
                outcome.id(),
                outcome.name(),
                outcome.state(),
                broken || !ours ? "" : outcome.message(),
                broken ? "" : outcome.printed(),
                outcome.result(),
                broken ? List.of() : outcome.controls(),
                outcome.follows(),
                outcome.takes(),
                Map.of());
    }

    private static boolean differs(Outcome found, Outcome expected, UnaryOperator<Outcome> compared) {
        if (isBrokenOff(found)) {
            return found.state() != expected.state() && expected.state() != State.NOT_RUN;
        }
        return !compared.apply(found).equals(compared.apply(expected));
    }

    private static Outcome withoutStateOf(Set<String> broken, Outcome outcome) {
        boolean needsOne = outcome.takes().stream().anyMatch(need -> broken.contains(need.rowId()));
        return outcome.state() == State.NOT_RUN && needsOne
                ? outcome.saying(outcome.message().replaceFirst(", which .*", ""))
                : outcome;
    }

    /** How far a row came before it was broken off is its own affair; one above may have been broken off since. */
    private static boolean isBrokenOff(Outcome outcome) {
        return outcome.state() == State.STOPPED || outcome.message().endsWith("its worker.");
    }

    private static Outcome unnamed(Outcome outcome, boolean unnamed) {
        return unnamed ? outcome.called("") : outcome;
    }
}
