package rakeline.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rakeline.engine.Control;
import rakeline.figure.Chart;
import rakeline.figure.Column;
import rakeline.figure.Figure;
import rakeline.figure.MapFigure;
import rakeline.quantity.Caution;
import rakeline.quantity.Quantity;

/** What the numbers of a page rest on: the quantities that it used, the files that it named, the cautions of both. */
final class Grounds {
    private static final Pattern WORD = Pattern.compile("[A-Za-z_][A-Za-z0-9_.]*");
    private static final Pattern FILE = Pattern.compile("\"([^\"\\\\\\n]+\\.(?:bike|rider)\\.json)\"");

    private final RunPage run;
    private final Knowledge knowledge;

    Grounds(RunPage run, Knowledge knowledge) {
        this.run = run;
        this.knowledge = knowledge;
    }

    /** The quantities of the page's dials, figures and code, in that order, each once. */
    List<Quantity> quantities() {
        Map<String, Quantity> used = new LinkedHashMap<>();
        Stream<Quantity> told = Stream.of(run.figures().stream().flatMap(Grounds::own), keys().flatMap(this::known))
                .flatMap(all -> all);
        told.forEach(quantity -> used.putIfAbsent(quantity.key(), quantity));
        return List.copyOf(used.values());
    }

    private Stream<Quantity> known(String word) {
        return knowledge.quantities().apply(word).stream();
    }

    private static Stream<Quantity> own(Figure figure) {
        if (figure instanceof Chart chart) {
            return Stream.concat(Stream.of(chart.x()), chart.panels().stream().map(Chart.Panel::quantity));
        }
        return figure instanceof MapFigure map
                ? Stream.of(map.x().quantity(), map.y().quantity(), map.measure())
                : Stream.empty();
    }

    private Stream<String> keys() {
        Stream<String> dials = run.controls().stream()
                .filter(Control.Dial.class::isInstance)
                .map(control -> ((Control.Dial) control).key());
        Stream<String> columns = run.figures().stream()
                .filter(figure -> !(figure instanceof Chart) && !(figure instanceof MapFigure))
                .flatMap(figure -> figure.columns().stream())
                .flatMap(column -> Stream.concat(Stream.of(column.key()), listed(column)));
        Stream<String> words = WORD.matcher(run.code()).results().map(found -> found.group());
        return Stream.of(dials, columns, words).flatMap(all -> all).distinct();
    }

    /** Some tables have the keys of their lines in a column. */
    private static Stream<String> listed(Column column) {
        return column.key().equals("key") ? column.shown().stream() : Stream.empty();
    }

    /** What the page's bikes and riders leave to usual values, or assume. */
    List<String> assumptions() {
        Set<String> paths = new LinkedHashSet<>();
        run.controls().stream()
                .filter(Control.Picker.class::isInstance)
                .forEach(picker -> paths.add(((Control.Picker) picker).chosen()));
        paths.addAll(run.page().rack());
        FILE.matcher(run.code()).results().forEach(found -> paths.add(found.group(1)));
        return paths.stream()
                .flatMap(path -> knowledge.assumptions().apply(path).stream())
                .distinct()
                .toList();
    }

    /** What figures held, each with its figure's title. */
    List<String> held() {
        return run.figures().stream()
                .filter(figure -> !conditions(figure).isBlank())
                .map(figure -> titleOf(figure) + ": " + conditions(figure))
                .distinct()
                .toList();
    }

    private static String conditions(Figure figure) {
        return (figure.held() + " " + figure.basis().words()).strip();
    }

    private static String titleOf(Figure figure) {
        return figure.title().isBlank() ? "A figure" : figure.title().replaceFirst("[.]$", "");
    }

    /** Cautions of figures and quantities, each once. */
    List<Caution> cautions() {
        Stream<Caution> ofFigures = run.figures().stream().flatMap(figure -> figure.cautions().stream());
        return Stream.concat(ofFigures, Quantity.cautionsOf(quantities()).stream())
                .distinct()
                .toList();
    }

    /** A quantity explained. */
    Block.Entry entry(Quantity quantity) {
        return entry(quantity, knowledge.drawings().apply(quantity.key()));
    }

    static Block.Entry entry(Quantity quantity, Optional<Figure> drawing) {
        List<String> lines = new ArrayList<>();
        lines.add(quantity.definition());
        lines.add("Unit: " + quantity.unit().symbol());
        lines.addAll(quantity.facts());
        return new Block.Entry(quantity.label(), quantity.key(), lines, quantity.cautions(), drawing);
    }
}
