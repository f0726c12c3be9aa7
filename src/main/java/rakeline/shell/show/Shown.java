package rakeline.shell.show;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.figure.CautionsSaid;
import rakeline.figure.Chart;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.quantity.Caution;
import rakeline.quantity.Quantity;
import rakeline.shell.look.Words;
import rakeline.shell.page.PageModel;
import rakeline.study.Vocabulary;
import rakeline.worksheet.Answer;
import rakeline.worksheet.Row;

/**
 * One row with a figure, as it is to be shown.
 *
 * @param old whether the figure is not of now
 * @param hidden whether it belongs to an answer that is closed
 */
record Shown(String row, Figure figure, Outcome standing, boolean old, boolean hidden) {
    private static final String CLOSED = "Answer. Press A to open it.";

    /** The rows of a page that have a figure, in page order; of an answer that is closed one alone, without its figure. */
    static List<Shown> on(PageModel now) {
        CautionsSaid said = new CautionsSaid();
        List<Shown> all = new ArrayList<>();
        Set<Answer> closed = new HashSet<>();
        for (Row row : now.rows()) {
            figure(now, row.id())
                    .filter(figure -> !now.isHidden(row.id())
                            || closed.add(Answer.holding(now.page(), row.id()).orElseThrow()))
                    .ifPresent(figure -> all.add(of(now, row.id(), figure, said)));
        }
        return List.copyOf(all);
    }

    private static Optional<Figure> figure(PageModel now, String row) {
        return now.standing(row)
                .result()
                .filter(Result.Shown.class::isInstance)
                .map(result -> ((Result.Shown) result).figure())
                .or(() -> now.figureBefore(row));
    }

    private static Shown of(PageModel now, String row, Figure figure, CautionsSaid said) {
        boolean hidden = now.isHidden(row);
        Figure seen = hidden ? new Table("", List.of(), "", List.of()) : said.next(figure);
        return new Shown(row, seen, now.standing(row), now.isOld(row), hidden);
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
     * What stands beneath: how the row stands where it is not fresh, and what was held.
     *
     * @param withHeld without, what was held stands elsewhere
     */
    String words(boolean withHeld) {
        if (hidden) {
            return CLOSED;
        }
        String state = old ? Words.ofBefore(standing.state().words()) + why() : "";
        return Stream.concat(
                        Stream.of(state, withHeld ? held() : "", figure.basis().words()),
                        Sliced.sentences(figure).stream())
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining(" "));
    }

    /** The cautions that stand beneath; none is empty. */
    String cautions(boolean inFull) {
        return cautions(figure.cautions(), inFull);
    }

    /** Whether something was held. */
    boolean holds() {
        return !held().isEmpty();
    }

    /** What was held, to be read as a part of its own. */
    Figure heldPart() {
        return new Table(figure.title(), List.of(), figure.held(), List.of());
    }

    /**
     * The same beneath a part of the figure: a caution that belongs to quantities of other parts alone stands there.
     *
     * @param inFull whether those that have been said before are said in full once more
     */
    String cautions(Figure part, boolean inFull) {
        Set<Caution> of = cautions(part);
        Set<Caution> elsewhere = cautions(Sliced.like(part, figure));
        return cautions(
                figure.cautions().stream()
                        .filter(caution -> of.contains(whole(caution)) || !elsewhere.contains(whole(caution)))
                        .toList(),
                inFull);
    }

    private static String cautions(List<Caution> cautions, boolean inFull) {
        List<Caution> said = inFull ? cautions.stream().map(Shown::whole).toList() : cautions;
        return CautionsSaid.paragraphs(said).stream()
                .map(words -> "Caution: " + words)
                .collect(Collectors.joining("\n"));
    }

    private static Caution whole(Caution caution) {
        return new Caution(caution.word(), caution.sentence());
    }

    private static Set<Caution> cautions(Figure figure) {
        Stream<Quantity> quantities = figure instanceof Chart chart
                ? chart.panels().stream().map(Chart.Panel::quantity)
                : figure instanceof Table ? named(Sliced.names(figure)) : Stream.empty();
        return quantities.flatMap(quantity -> quantity.cautions().stream()).collect(Collectors.toSet());
    }

    private static Stream<Quantity> named(Set<String> names) {
        return Vocabulary.standard().quantities().stream()
                .filter(quantity -> names.contains(quantity.key())
                        || names.contains(quantity.label().toLowerCase(Locale.ROOT)));
    }

    private String why() {
        String sentence = standing.message().lines().findFirst().orElse("");
        return sentence.isEmpty() ? "" : " " + sentence;
    }

    String held() {
        return figure.held().isBlank() ? "" : "Held: " + figure.held().replaceFirst("[.]*$", "") + ".";
    }
}
