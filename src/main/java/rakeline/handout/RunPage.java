package rakeline.handout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.engine.Control;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.figure.Figure;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/**
 * A page and how its rows stand.
 *
 * @param outcomes of its snippets, in page order
 */
public record RunPage(Worksheet page, List<Outcome> outcomes) {
    public RunPage {
        outcomes = List.copyOf(outcomes);
    }

    /** The same without folded rows, for those who shall find the answers themselves. */
    RunPage withoutAnswers() {
        List<Row> open = page.rows().stream().filter(row -> !row.folded()).toList();
        Set<String> ids = open.stream().map(Row::id).collect(Collectors.toSet());
        return new RunPage(
                page.withRows(open),
                outcomes.stream().filter(outcome -> ids.contains(outcome.id())).toList());
    }

    Map<String, Outcome> byId() {
        return outcomes.stream().collect(Collectors.toMap(Outcome::id, Function.identity()));
    }

    /** For each row that has no up-to-date result, which and why, in one sentence. */
    public List<String> gaps() {
        return outcomes.stream()
                .filter(outcome -> outcome.state() != State.FRESH)
                .map(outcome ->
                        standing(outcome, outcome.message().lines().findFirst().orElse("")))
                .toList();
    }

    /** How a row stands, and why. */
    static String standing(Outcome outcome, String why) {
        return "Row " + outcome.name().replaceFirst("^row ", "") + ", "
                + outcome.state().words() + (why.isEmpty() ? "." : ": " + why);
    }

    List<Control> controls() {
        return outcomes.stream().flatMap(outcome -> outcome.controls().stream()).toList();
    }

    List<Figure> figures() {
        return outcomes.stream()
                .map(Outcome::result)
                .flatMap(Optional::stream)
                .filter(Result.Shown.class::isInstance)
                .map(result -> ((Result.Shown) result).figure())
                .toList();
    }

    /** The text of all snippets. */
    String code() {
        return rows(Row.Snippet.class).map(Row::text).collect(Collectors.joining("\n"));
    }

    private <T extends Row> Stream<Row> rows(Class<T> kind) {
        return page.rows().stream().filter(kind::isInstance);
    }
}
