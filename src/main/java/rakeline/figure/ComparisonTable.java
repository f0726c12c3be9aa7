package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.study.fit.Comparison;
import rakeline.study.fit.Contender;

/** Bikes side by side, with the differences against the first. */
public final class ComparisonTable {
    private static final String STAR = " *";
    private static final String NO_STAR = "\u00a0\u00a0";

    /** How the numbers of a comparison are written, as in the unit that a person chose for lengths. */
    public interface Told {
        /** A label with its unit. */
        String heading(Quantity quantity);

        /**
         * A number without its unit.
         *
         * @param moreDecimals beyond those of the quantity
         */
        String number(Quantity quantity, double value, int moreDecimals);
    }

    private static final Told IN_OWN_UNITS = new Told() {
        @Override
        public String heading(Quantity quantity) {
            return quantity.heading();
        }

        @Override
        public String number(Quantity quantity, double value, int moreDecimals) {
            return Decimals.fixed(value, quantity.decimals() + moreDecimals);
        }
    };

    private ComparisonTable() {}

    /** Inputs that differ, then every measure. */
    public static Table of(Comparison comparison) {
        List<Comparison.Row> rows = rows(comparison);
        List<Column> columns = new ArrayList<>();
        columns.add(words("measure", "Measure", rows, row -> row.quantity().label()));
        for (int bike = 0; bike < comparison.contenders().size(); bike++) {
            columns.addAll(of(comparison, rows, bike));
        }
        columns.add(words("unit", "Unit", rows, row -> row.quantity().unit().symbol()));
        columns.add(words("key", "Key", rows, row -> row.quantity().key()));
        return new Table(title(comparison), columns, held(comparison, "words say"), comparison.cautions())
                .about(basis(comparison, rows));
    }

    /** For a narrow place: units beside the labels, no keys, a star at each difference beyond its uncertainty. */
    public static Table brief(Comparison comparison, Told told) {
        List<Comparison.Row> rows = rows(comparison);
        List<Column> columns = new ArrayList<>();
        columns.add(words("measure", "Measure", rows, row -> told.heading(row.quantity())));
        for (int bike = 0; bike < comparison.contenders().size(); bike++) {
            columns.add(value(comparison, rows, bike, told));
            if (bike > 0) {
                columns.add(starred(difference(rows, bike, told), rows, bike));
                columns.add(percent(rows, bike));
                columns.add(uncertainty(rows, bike, told));
            }
        }
        return new Table(title(comparison), columns, held(comparison, "a star marks"), comparison.cautions())
                .about(basis(comparison, rows));
    }

    private static Basis basis(Comparison comparison, List<Comparison.Row> rows) {
        return Basis.of(
                rides(comparison), rows.stream().map(row -> row.quantity().key()));
    }

    private static Column starred(Column differences, List<Comparison.Row> rows, int bike) {
        List<String> shown = IntStream.range(0, rows.size())
                .mapToObj(i -> differences.shown().get(i) + (rows.get(i).tellsApart(bike) ? STAR : NO_STAR))
                .toList();
        return new Column(differences.key(), differences.label(), "", differences.values(), shown);
    }

    private static List<Comparison.Row> rows(Comparison comparison) {
        return Stream.concat(comparison.inputs().stream(), comparison.measures().stream())
                .toList();
    }

    private static List<Column> of(Comparison comparison, List<Comparison.Row> rows, int bike) {
        Column value = value(comparison, rows, bike, IN_OWN_UNITS);
        return bike == 0
                ? List.of(value)
                : List.of(
                        value,
                        difference(rows, bike, IN_OWN_UNITS),
                        percent(rows, bike),
                        uncertainty(rows, bike, IN_OWN_UNITS),
                        words("apart" + place(bike), "tells apart", rows, row -> row.difference(bike)));
    }

    private static String place(int bike) {
        return String.valueOf(bike + 1);
    }

    private static Column value(Comparison comparison, List<Comparison.Row> rows, int bike, Told told) {
        return numbers(
                "bike" + place(bike),
                name(comparison, bike),
                rows,
                0,
                row -> row.values().at(bike),
                told);
    }

    private static Column difference(List<Comparison.Row> rows, int bike, Told told) {
        return numbers(
                "difference" + place(bike),
                "against the first",
                rows,
                1,
                row -> row.differences().at(bike),
                told);
    }

    /** Empty where none is known of any number that a difference follows from. */
    private static Column uncertainty(List<Comparison.Row> rows, int bike, Told told) {
        Column all = numbers(
                "uncertainty" + place(bike),
                "±",
                rows,
                1,
                row -> row.uncertainties().at(bike),
                told);
        List<String> shown = IntStream.range(0, rows.size())
                .mapToObj(i -> small(
                        rows.get(i).quantity(), all.values().at(i), all.shown().get(i)))
                .toList();
        return new Column(all.key(), all.label(), "", all.values(), shown);
    }

    private static String small(Quantity quantity, double uncertainty, String shown) {
        boolean vanishes = Math.abs(uncertainty) < 0.5 * Math.pow(10, -quantity.decimals() - 1);
        if (!vanishes) {
            return shown;
        }
        return uncertainty == 0 ? "" : quantity.formatSmall(uncertainty);
    }

    private static String name(Comparison comparison, int bike) {
        return BikeNames.above(rides(comparison)).get(bike);
    }

    private static List<Ride> rides(Comparison comparison) {
        return comparison.contenders().stream().map(Contender::ride).toList();
    }

    /** The bikes; what of a rider's footing differs between them is said first. */
    private static String title(Comparison comparison) {
        String names = BikeNames.line(rides(comparison));
        List<String> different = comparison.differentFooting();
        return different.isEmpty() ? names : String.join(" ", different) + " " + names;
    }

    private static String held(Comparison comparison, String mark) {
        String contact = comparison
                .contact()
                .map(from -> from + " on every bike. ")
                .orElse("each bike as built, with its own contact points. ");
        String changes = comparison.changes();
        return contact
                + (changes.isEmpty() ? "" : changes + ", all else as it was. ")
                + "± is the standard uncertainty of a difference, from those of the inputs to first order, what two bikes"
                + " share counted once; " + mark + " a difference of more than twice it.";
    }

    private static Column numbers(
            String key,
            String label,
            List<Comparison.Row> rows,
            int moreDecimals,
            ToDoubleFunction<Comparison.Row> cell,
            Told told) {
        Numbers values = Numbers.generate(rows.size(), i -> cell.applyAsDouble(rows.get(i)));
        List<String> shown = IntStream.range(0, rows.size())
                .mapToObj(i -> told.number(rows.get(i).quantity(), values.at(i), moreDecimals))
                .toList();
        return new Column(key, label, "", values, shown);
    }

    private static Column percent(List<Comparison.Row> rows, int bike) {
        Numbers values = Numbers.generate(rows.size(), i -> rows.get(i).percent(bike));
        List<String> shown = IntStream.range(0, rows.size())
                .mapToObj(i -> Double.isNaN(values.at(i)) ? "" : Decimals.fixed(values.at(i), 1))
                .toList();
        return new Column("percent" + place(bike), "%", "", values, shown);
    }

    private static Column words(
            String key, String label, List<Comparison.Row> rows, Function<Comparison.Row, String> word) {
        return Column.ofWords(key, label, rows.stream().map(word).toList());
    }

    /** The side views, laid over each other at BB. */
    public static Drawing drawing(Comparison comparison) {
        return BikeDrawing.sideView(rides(comparison));
    }
}
