package rakeline.figure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.study.Reconcile;
import rakeline.study.Residual;
import rakeline.study.Suspect;

/** A reconciled chart as a table of residuals, a table of suspects, and sentences that say which would have to be what. */
public final class ReconcileTable {
    /** Differences in mm that are worth a word (common practice); for display alone. */
    private static final double LOUD = 8;

    private static final double NOTICED = 4;
    private static final double TRAIL_NOTICED = 2;
    private static final double MICRO = 1e6;

    private ReconcileTable() {}

    /** Charted, derived, their difference, and what rounding explains of it; one decimal more than the number has. */
    public static Table residuals(Reconcile reconciled) {
        List<Residual> rows = reconciled.residuals();
        List<Column> columns = List.of(
                words("quantity", "Charted number", rows, row -> row.quantity().heading()),
                numbers("charted", "Charted", rows, Residual::charted, 0),
                numbers("derived", "Derived", rows, Residual::derived, 0),
                numbers("residual", "Residual", rows, Residual::residual, 1),
                numbers("tolerance", "Tolerance", rows, Residual::tolerance, 1),
                words("explained", "Explained by rounding", rows, ReconcileTable::explained));
        return new Table(reconciled.bike().name() + ", charted against derived", columns, "", List.of());
    }

    /** One row for each suspect, most likely first. */
    public static Table suspects(Reconcile reconciled) {
        List<Suspect> rows = reconciled.suspects();
        Stream<Column> columns = Stream.of(
                words("number", "Number", rows, row -> row.quantity().heading()),
                new Column("charted", "Charted", "", values(rows, Suspect::charted), shown(rows, Suspect::charted)),
                new Column(
                        "wouldBe",
                        "Would have to be",
                        "",
                        values(rows, Suspect::wouldBe),
                        shown(rows, Suspect::wouldBe)),
                words("sameAs", "Cannot be told from", rows, row -> labels(rows, row.sameAs())),
                words("because", "Because", rows, Suspect::because));
        return new Table(
                reconciled.bike().name() + ", which number would have to be another",
                columns.filter(column -> rows.isEmpty() || says(column)).toList(),
                "",
                List.of());
    }

    private static boolean says(Column column) {
        return column.shown().stream().anyMatch(cell -> !cell.isEmpty());
    }

    private static String labels(List<Suspect> all, List<String> keys) {
        return all.stream()
                .filter(suspect -> keys.contains(suspect.key()))
                .map(suspect -> suspect.quantity().label())
                .collect(Collectors.joining("; "));
    }

    /** How sentences call a number and how they write it. */
    public interface Told {
        String name(Quantity number);

        String value(Quantity number, double value);

        String withUnit(Quantity number, double value);
    }

    private static final Told IN_KEYS = new Told() {
        @Override
        public String name(Quantity number) {
            return number.key();
        }

        @Override
        public String value(Quantity number, double value) {
            return shown(value);
        }

        @Override
        public String withUnit(Quantity number, double value) {
            return number.unit().attach(shown(value));
        }
    };

    /** What the tables mean, most likely first: a sentence for each group of suspects. */
    public static List<String> sentences(Reconcile reconciled) {
        if (reconciled.residuals().isEmpty()) {
            return List.of("Nothing charted follows from the other numbers, so nothing can be checked.");
        }
        if (reconciled.agrees()) {
            return List.of("Rounding explains every difference.");
        }
        return sentences(reconciled.suspects(), IN_KEYS);
    }

    /** The sentences on a chart that disagrees, told otherwise. */
    public static List<String> sentences(List<Suspect> suspects, Told told) {
        return suspects.isEmpty()
                ? List.of("No single number would make this chart agree: two or more would have to be others.")
                : groups(suspects, told);
    }

    private static List<String> groups(List<Suspect> suspects, Told words) {
        List<String> sentences = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Suspect suspect : suspects) {
            if (told.add(suspect.key())) {
                told.addAll(suspect.sameAs());
                sentences.add(sentence(
                        suspects.stream()
                                .filter(other -> other.key().equals(suspect.key())
                                        || suspect.sameAs().contains(other.key()))
                                .toList(),
                        words));
            }
        }
        return sentences;
    }

    private static String sentence(List<Suspect> group, Told words) {
        String first = clause(group.get(0), " would have to be ", words);
        if (group.size() == 1) {
            return first + ".";
        }
        String others = String.join(
                ", or ",
                group.stream()
                        .skip(1)
                        .map(suspect -> clause(suspect, " ", words))
                        .toList());
        return first + ", or " + others + ": this chart cannot tell them apart.";
    }

    private static String clause(Suspect suspect, String verb, Told words) {
        String because = suspect.because().isEmpty() ? "" : " (" + suspect.because() + ")";
        Quantity number = suspect.quantity();
        return words.name(number) + verb + words.value(number, suspect.wouldBe()) + " instead of "
                + words.withUnit(number, suspect.charted()) + because;
    }

    private static String explained(Residual residual) {
        if (residual.isWithin()) {
            return "yes";
        }
        double size = Math.abs(residual.residual());
        String flag = flag(residual.quantity().key(), size);
        return "all but " + Decimals.fixed(size - residual.tolerance(), 1) + (flag.isEmpty() ? "" : "; " + flag);
    }

    private static String flag(String key, double size) {
        return switch (key) {
            case "charted.wheelbaseMm" -> size > LOUD ? "over 8 mm" : size > NOTICED ? "over 4 mm" : "";
            case "charted.trailMm" -> size > TRAIL_NOTICED ? "over 2 mm" : "";
            case "charted.effectiveTopTubeMm" -> size > NOTICED ? "over 4 mm, usually the seat angle's height" : "";
            default -> "";
        };
    }

    private static <T> Column words(String key, String label, List<T> rows, Function<T, String> word) {
        return Column.ofWords(key, label, rows.stream().map(word).toList());
    }

    private static Column numbers(
            String key, String label, List<Residual> rows, ToDoubleFunction<Residual> number, int more) {
        List<String> shown = rows.stream()
                .map(row ->
                        Decimals.fixed(number.applyAsDouble(row), row.quantity().decimals() + more))
                .toList();
        return new Column(key, label, "", values(rows, number), shown);
    }

    private static <T> Numbers values(List<T> rows, ToDoubleFunction<T> number) {
        return Numbers.generate(rows.size(), i -> number.applyAsDouble(rows.get(i)));
    }

    private static List<String> shown(List<Suspect> rows, ToDoubleFunction<Suspect> number) {
        return rows.stream().map(row -> shown(number.applyAsDouble(row))).toList();
    }

    private static String shown(double value) {
        return Decimals.shown(Math.rint(value * MICRO) / MICRO);
    }
}
