package rakeline.shell.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rakeline.quantity.Decimals;

/**
 * What a snippet's one sweep holds, where its form is recognised: {@code sweep(…).over(…)}, with at most one
 * {@code .hold(…).by(…)} after it. Strings and comments are passed over.
 *
 * @param from where {@code .hold(…).by(…)} begins, or would
 * @param to where it ends
 * @param now what is held
 */
public record HeldSource(String text, int from, int to, Optional<Held> now) {
    private static final Pattern SWEEP = Pattern.compile("\\bsweep\\s*\\(");
    private static final Pattern OVER = Pattern.compile("\\.\\s*over\\s*\\(");
    private static final Pattern HOLD = Pattern.compile("\\s*\\.\\s*hold\\s*\\(");
    private static final Pattern BY = Pattern.compile("\\s*\\.\\s*by\\s*\\(");
    private static final Pattern NEXT_CALL = Pattern.compile("\\n([ \\t]*)\\.");

    /**
     * One measure held by one input.
     *
     * @param measure as the source names it: a key in quotes, or a constant
     * @param value NaN for the one at the start
     * @param by as the source names it
     */
    public record Held(String measure, double value, String by) {
        /** With keys, as this program writes it. */
        public static Held ofKeys(String measure, double value, String by) {
            return new Held("\"" + measure + "\"", value, "\"" + by + "\"");
        }

        private String source() {
            String at = Double.isNaN(value) ? "" : ", " + Decimals.shown(value);
            return ".hold(" + measure + at + ").by(" + by + ")";
        }
    }

    /** The sweep of a snippet; none where its form is not recognised. */
    public static Optional<HeldSource> of(String text) {
        JavaText code = JavaText.of(text);
        List<MatchResult> sweeps = code.all(SWEEP);
        List<MatchResult> overs = code.all(OVER);
        List<MatchResult> holds = code.all(HOLD);
        if (sweeps.size() != 1 || overs.size() != 1 || holds.size() > 1) {
            return Optional.empty();
        }
        int over = code.closing(overs.get(0).end() - 1) + 1;
        if (over == 0) {
            return Optional.empty();
        }
        return holds.isEmpty()
                ? Optional.of(new HeldSource(text, over, over, Optional.empty()))
                : held(code, holds.get(0));
    }

    private static Optional<HeldSource> held(JavaText code, MatchResult hold) {
        int closed = code.closing(hold.end() - 1);
        Matcher by = BY.matcher(code.text());
        if (closed < 0 || !by.region(closed + 1, code.text().length()).lookingAt()) {
            return Optional.empty();
        }
        int end = code.closing(by.end() - 1);
        List<String> holding = arguments(code.text().substring(hold.end(), closed));
        if (end < 0 || holding.isEmpty() || holding.size() > 2) {
            return Optional.empty();
        }
        String named = code.text().substring(by.end(), end).strip();
        return value(holding)
                .map(value -> new HeldSource(
                        code.text(), hold.start(), end + 1, Optional.of(new Held(holding.get(0), value, named))));
    }

    private static List<String> arguments(String inside) {
        List<String> arguments = new ArrayList<>();
        for (String argument : inside.split(",", -1)) {
            arguments.add(argument.strip());
        }
        return arguments;
    }

    private static Optional<Double> value(List<String> holding) {
        if (holding.size() == 1) {
            return Optional.of(Double.NaN);
        }
        return holding.get(1).matches("-?\\d{1,12}(\\.\\d{1,12})?")
                ? Optional.of(Double.parseDouble(holding.get(1)))
                : Optional.empty();
    }

    /** The snippet with something else held, or nothing but every other input. */
    public String with(Optional<Held> held) {
        String before = text.substring(0, from);
        String after = text.substring(to);
        String lead = now.isPresent() ? leadNow() : lead();
        return before + held.map(one -> lead + one.source()).orElse("") + after;
    }

    /** The blanks before what is held now. */
    private String leadNow() {
        String is = text.substring(from, to);
        return is.substring(0, is.indexOf('.'));
    }

    /** A line of its own where the other calls have theirs. */
    private String lead() {
        Matcher next = NEXT_CALL.matcher(text);
        return next.find() ? "\n" + next.group(1) : "";
    }
}
