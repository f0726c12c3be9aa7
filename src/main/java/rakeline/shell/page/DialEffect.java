package rakeline.shell.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.engine.Control;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.figure.Basis;
import rakeline.figure.Chart;

/** What a moved dial comes to in one number: the first measure of a chart that follows it, of the bicycle drawn beside. */
public final class DialEffect {
    private final List<Chart> charts;
    private final List<Basis.Subject> drawn;

    private DialEffect(List<Chart> charts, List<Basis.Subject> drawn) {
        this.charts = charts;
        this.drawn = drawn;
    }

    /**
     * In words, as in {@code Toe room −8.6 mm}; where no chart that follows the dial is about a bicycle that is drawn
     * beside the page, with the bicycle's name. Empty where no chart follows it.
     */
    public static Optional<String> of(PageModel page, Control dial) {
        List<Chart> charts = page.rows().stream()
                .map(row -> page.standing(row.id()))
                .filter(row -> row.state() == State.FRESH && row.follows().contains(dial.name()))
                .flatMap(DialEffect::charts)
                .filter(chart -> !chart.panels().isEmpty()
                        && Double.isFinite(chart.panels().get(0).here()))
                .toList();
        List<Basis.Subject> drawn = Beside.of(page).values().stream()
                .flatMap(drawing -> drawing.basis().subjects().stream())
                .toList();
        return new DialEffect(charts, drawn).words();
    }

    private static Stream<Chart> charts(Outcome row) {
        return row.result().stream()
                .filter(result -> result instanceof Result.Shown shown && shown.figure() instanceof Chart)
                .map(result -> (Chart) ((Result.Shown) result).figure());
    }

    private Optional<String> words() {
        return charts.stream()
                .filter(this::isOfTheDrawn)
                .findFirst()
                .or(() -> charts.stream().findFirst())
                .map(this::words);
    }

    /** Also where nothing is known of either. */
    private boolean isOfTheDrawn(Chart chart) {
        List<Basis.Subject> subjects = chart.basis().subjects();
        return drawn.isEmpty()
                || subjects.isEmpty()
                || subjects.stream().allMatch(subject -> drawn.stream().anyMatch(subject::isSameAs));
    }

    private String words(Chart chart) {
        Chart.Panel first = chart.panels().get(0);
        String measure = first.quantity().label() + " " + first.quantity().formatWithUnit(first.here());
        return isOfTheDrawn(chart) ? measure : measure + " (" + whose(chart.basis()) + ")";
    }

    private static String whose(Basis basis) {
        Basis.Subject subject = basis.subjects().get(0);
        return basis.ofShoe() && !subject.shoe().isEmpty()
                ? subject.name() + " with " + subject.shoe()
                : subject.name();
    }
}
