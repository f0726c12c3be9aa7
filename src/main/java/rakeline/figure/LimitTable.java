package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.quantity.Limit;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.rider.Rider;
import rakeline.study.fit.Left;

/** What bikes have left to each limit. */
public final class LimitTable {
    private LimitTable() {}

    /** One row a limit; the value and what is left of each bike at its own contact points. */
    public static Table of(List<Ride> rides, List<Left> rows) {
        return of(rides, rows, Optional.empty());
    }

    /**
     * One row a limit; the value and what is left of each bike.
     *
     * @param contact whose contact points are on all; empty where each has its own
     */
    public static Table of(List<Ride> rides, List<Left> rows, Optional<String> contact) {
        List<Column> columns = new ArrayList<>();
        columns.add(words("limited", "Limited", rows, row -> row.quantity().label()));
        columns.add(words("limit", "Limit", rows, LimitTable::limit));
        for (int i = 0; i < rides.size(); i++) {
            int bike = i;
            String name = BikeNames.above(rides).get(i);
            columns.add(
                    numbers("value" + (i + 1), name, rows, row -> row.values().at(bike)));
            columns.add(
                    numbers("left" + (i + 1), "left", rows, row -> row.left().at(bike)));
        }
        columns.add(words("unit", "Unit", rows, row -> row.quantity().unit().symbol()));
        columns.add(source(rows));
        return table(rides, rows, columns, contact);
    }

    /** For a narrow place: what is left of each bike under its name, units beside the labels. */
    public static Table brief(List<Ride> rides, List<Left> rows, Optional<String> contact) {
        List<Column> columns = new ArrayList<>();
        columns.add(words("limited", "Limited", rows, row -> row.quantity().heading()));
        columns.add(words("limit", "Limit", rows, LimitTable::limit));
        for (int i = 0; i < rides.size(); i++) {
            int bike = i;
            columns.add(numbers(
                    "left" + (i + 1),
                    BikeNames.above(rides).get(i),
                    rows,
                    row -> row.left().at(bike)));
        }
        columns.add(source(rows));
        return table(rides, rows, columns, contact);
    }

    /** The same for what race rules and recommendations set. */
    public static Table rules(List<Ride> rides, List<Left> rows) {
        Table table = of(rides, rows);
        return new Table("Race rules and recommendations", table.columns(), "", List.of());
    }

    private static Column source(List<Left> rows) {
        return words("source", "Source", rows, row -> row.limit().source());
    }

    private static Table table(List<Ride> rides, List<Left> rows, List<Column> columns, Optional<String> contact) {
        String names = BikeNames.line(rides);
        return new Table(
                        names + at(rides, contact) + ": what is left to each limit; negative beyond it, by how far",
                        columns,
                        "",
                        Quantity.cautionsOf(rows.stream().map(Left::quantity).toList()))
                .about(Basis.of(rides, rows.stream().map(row -> row.quantity().key())));
    }

    /** Whose contact points they are at; nothing where no bike has any. */
    private static String at(List<Ride> rides, Optional<String> contact) {
        boolean seated = rides.stream().anyMatch(ride -> ride.bike().hasGroup("contact"));
        String own = rides.size() == 1 ? ", at its own contact points" : ", each at its own contact points";
        return contact.or(() -> riders(rides)).map(whose -> ", at " + whose).orElse(seated ? own : "");
    }

    /** The contact points that one rider brings to all. */
    private static Optional<String> riders(List<Ride> rides) {
        List<String> names = rides.stream()
                .flatMap(ride -> ride.ridden().rider().stream())
                .filter(rider -> rider.own().containsKey(Inputs.CONTACT_SIT_X))
                .map(Rider::name)
                .toList();
        boolean one = names.size() == rides.size() && names.stream().distinct().count() == 1;
        return one ? Optional.of("the contact points of " + names.get(0)) : Optional.empty();
    }

    private static String limit(Left row) {
        Limit limit = row.limit();
        String side = limit.side() == Limit.Side.AT_LEAST ? "≥ " : "≤ ";
        return Double.isNaN(limit.value())
                ? limit.label()
                : side + Decimals.shown(limit.value()) + ", " + limit.label();
    }

    private static Column numbers(String key, String label, List<Left> rows, Function<Left, Double> cell) {
        Numbers values = Numbers.generate(rows.size(), i -> cell.apply(rows.get(i)));
        List<String> shown = IntStream.range(0, rows.size())
                .mapToObj(i -> rows.get(i).quantity().format(values.at(i)))
                .toList();
        return new Column(key, label, "", values, shown);
    }

    private static Column words(String key, String label, List<Left> rows, Function<Left, String> word) {
        return Column.ofWords(key, label, rows.stream().map(word).toList());
    }
}
