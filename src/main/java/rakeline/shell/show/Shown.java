package rakeline.shell.show;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.figure.Chart;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.quantity.Quantity;
import rakeline.shell.look.Words;
import rakeline.shell.page.PageModel;
import rakeline.study.Vocabulary;

/**
 * One row with a figure, as it is to be shown.
 *
 * @param old whether the figure is not of now
 */
record Shown(String row, Figure figure, Outcome standing, boolean old) {
    /** The rows of a page that have a figure, in page order. */
    static List<Shown> on(PageModel now) {
        return now.rows().stream().flatMap(row -> of(now, row.id()).stream()).toList();
    }

    private static Optional<Shown> of(PageModel now, String row) {
        Outcome standing = now.standing(row);
        return standing.result()
                .filter(Result.Shown.class::isInstance)
                .map(result -> ((Result.Shown) result).figure())
                .or(() -> now.figureBefore(row))
                .map(figure -> new Shown(row, figure, standing, now.isOld(row)));
    }

    /** The place of a row's figure among others, or of the first one below the row, or of the last. */
    static int at(List<Shown> all, PageModel now, Optional<String> row) {
        List<String> ids = now.rows().stream().map(each -> each.id()).toList();
        int wanted = row.map(ids::indexOf).orElse(0);
        return IntStream.range(0, all.size())
                .filter(i -> ids.indexOf(all.get(i).row()) >= wanted)
                .findFirst()
                .orElse(all.size() - 1);
    }

    /**
     * What stands beneath: how the row stands where it is not fresh, what was held, all cautions.
     *
     * @param withHeld without, what was held stands elsewhere
     */
    String words(boolean withHeld) {
        return words(figure.cautions(), withHeld);
    }

    /** Whether something was held. */
    boolean holds() {
        return !held().isEmpty();
    }

    /** What was held, to be read as a part of its own. */
    Figure heldPart() {
        return new Table(figure.title(), List.of(), figure.held(), List.of());
    }

    /** The same beneath a part of the figure: a caution that belongs to quantities of other parts alone stands there. */
    String words(Figure part, boolean withHeld) {
        Set<String> of = cautions(part);
        Set<String> elsewhere = cautions(Sliced.like(part, figure));
        return words(
                figure.cautions().stream()
                        .filter(caution -> of.contains(caution) || !elsewhere.contains(caution))
                        .toList(),
                withHeld);
    }

    private static Set<String> cautions(Figure figure) {
        Stream<Quantity> quantities = figure instanceof Chart chart
                ? chart.panels().stream().map(Chart.Panel::quantity)
                : figure instanceof Table ? named(Sliced.names(figure)) : Stream.empty();
        return quantities.map(Quantity::caution).collect(Collectors.toSet());
    }

    private static Stream<Quantity> named(Set<String> names) {
        return Vocabulary.standard().quantities().stream()
                .filter(quantity -> names.contains(quantity.key())
                        || names.contains(quantity.label().toLowerCase(Locale.ROOT)));
    }

    private String words(List<String> cautions, boolean withHeld) {
        String state = old ? Words.ofBefore(standing.state().words()) + why() : "";
        return Stream.of(List.of(state, withHeld ? held() : ""), Sliced.sentences(figure), cautions)
                .flatMap(List::stream)
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining(" "));
    }

    private String why() {
        String sentence = standing.message().lines().findFirst().orElse("");
        return sentence.isEmpty() ? "" : " " + sentence;
    }

    String held() {
        return figure.held().isBlank() ? "" : "Held: " + figure.held().replaceFirst("[.]*$", "") + ".";
    }
}
