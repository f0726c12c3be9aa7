package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.study.Scatter;
import rakeline.study.Sensitivities;
import rakeline.study.Sized;
import rakeline.study.Solved;
import rakeline.study.Sought;
import rakeline.study.Target;
import rakeline.study.Vocabulary;

/** What the studies found, as tables. */
public final class StudyTables {
    /** Less than this is no slope of which a share could be told. */
    private static final double NO_SLOPE = 1e-9;

    /** As a share of a slope, an error of which the digits that are shown tell nothing. */
    private static final double WORTH_SAYING = 1e-5;

    private StudyTables() {}

    /** The solutions of a seek, one a row; where there is none, the nearest. */
    public static Table of(Sought sought) {
        List<Column> columns =
                sought.nearest().map(near -> nearest(sought, near)).orElseGet(() -> solutions(sought));
        return new Table(sought.title() + ". " + sought.sentence(), columns, sought.held(), sought.cautions())
                .about(basis(
                        sought.seek().start(), Stream.of(sought.seek().target().measure())));
    }

    private static List<Column> nearest(Sought sought, Sought.Nearest nearest) {
        return List.of(
                found(sought.seek().over().setting().quantity(), Numbers.of(nearest.at())),
                Column.of(sought.seek().target().measure().quantity(), Numbers.of(nearest.value())));
    }

    private static List<Column> solutions(Sought sought) {
        List<Column> columns = new ArrayList<>();
        columns.add(found(sought.seek().over().setting().quantity(), sought.values()));
        columns.add(solvedFor(sought, sought.seek().target().measure()));
        sought.seek()
                .hold()
                .ifPresent(hold -> columns.add(Column.of(hold.by().quantity(), numbers(sought, hold.by()))));
        if (!sought.touching().isEmpty()) {
            columns.add(words(
                    "touching",
                    "",
                    sought.solutions(),
                    solution -> solution.touching() ? "turns here, touches the target only" : ""));
        }
        return columns;
    }

    /** The solutions of a solve, one a row; where there is none, the nearest place and what it misses. */
    public static Table of(Solved solved) {
        List<Solved.Place> places =
                solved.solutions().isEmpty() ? solved.nearest().stream().toList() : solved.solutions();
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < solved.solve().spans().size(); i++) {
            columns.add(value(solved, places, i));
        }
        for (int i = 0; i < solved.solve().targets().size(); i++) {
            columns.add(reached(solved, places, i));
        }
        return new Table(solved.title() + ". " + solved.sentence(), columns, solved.held(), solved.cautions())
                .about(basis(
                        solved.solve().start(),
                        solved.solve().targets().stream().map(Target::measure)));
    }

    /** What was solved for: a decimal more than it is usually known to. */
    private static Column found(Quantity quantity, Numbers values) {
        return Column.of(quantity, values, quantity.decimals() + 1);
    }

    private static Column value(Solved solved, List<Solved.Place> places, int span) {
        Quantity quantity = solved.solve().spans().get(span).setting().quantity();
        return found(quantity, numbers(places, place -> place.values().at(span)));
    }

    private static Column reached(Solved solved, List<Solved.Place> places, int index) {
        Target target = solved.solve().targets().get(index);
        return Column.of(
                target.measure().quantity(),
                numbers(places, place -> target.value() + place.missed().at(index)));
    }

    /** Measures under one another, an input a column. */
    public static Table of(Sensitivities found) {
        List<Quantity> measures =
                found.sensitivity().tracks().stream().map(Measure::quantity).toList();
        List<Column> columns = new ArrayList<>();
        columns.add(words("measure", "Measure", measures, Quantity::heading));
        for (int i = 0; i < found.columns().size(); i++) {
            Quantity input = found.sensitivity().inputs().get(i).setting().quantity();
            String heading = input.label() + ", per " + input.unit().symbol();
            columns.add(slopes(
                    input.key(), heading, found.columns().get(i), found.errors().get(i)));
        }
        return new Table(found.title(), columns, found.held() + goodTo(found), found.cautions())
                .about(basis(found.sensitivity().start(), found.sensitivity().tracks().stream()));
    }

    private static Column slopes(String key, String heading, Numbers slopes, Numbers errors) {
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < slopes.size(); i++) {
            shown.add(slope(slopes.at(i), errors.at(i)));
        }
        return new Column(key, heading, "", slopes, shown);
    }

    /** Three decimals, of a small slope three digits; what it is good to where that is less. */
    private static String slope(double slope, double error) {
        boolean isSmall = Math.abs(slope) > NO_SLOPE && Math.abs(slope) < 1;
        int decimals = isSmall ? Math.max(3, 2 - (int) Math.floor(Math.log10(Math.abs(slope)))) : 3;
        boolean isGood = !(error > Math.pow(10, -decimals) / 2);
        return Decimals.fixed(slope, decimals) + (isGood ? "" : " ± " + Decimals.brief(error));
    }

    private static String goodTo(Sensitivities found) {
        double worst = 0;
        for (int i = 0; i < found.columns().size(); i++) {
            for (int j = 0; j < found.columns().get(i).size(); j++) {
                double slope = Math.abs(found.columns().get(i).at(j));
                double share = found.errors().get(i).at(j) / slope;
                worst = slope > NO_SLOPE && share > worst ? share : worst;
            }
        }
        return " Each figure is good to all digits that are shown, or as ± says"
                + (worst > WORTH_SAYING ? "; the least sure one to " + Decimals.brief(100 * worst) + " %." : ".");
    }

    /** Measures under one another: value, deviation of the draws, linear figure, share without a value. */
    public static Table of(Scatter scatter) {
        List<Scatter.Row> rows = scatter.rows();
        List<Column> columns = List.of(
                words("key", "Key", rows, row -> row.quantity().key()),
                words("measure", "Measure", rows, row -> row.quantity().label()),
                of("value", "Value", rows, Scatter.Row::value, 2),
                of("standardUncertainty", "± drawn", rows, Scatter.Row::standardUncertainty, 2),
                of("linear", "± linear", rows, Scatter.Row::linear, 2),
                of("nullSharePercent", "No value, %", rows, row -> 100 * row.nullShare(), 2),
                words("unit", "Unit", rows, row -> row.quantity().unit().symbol()));
        return new Table(scatter.title(), columns, scatter.held(), scatter.cautions())
                .about(basis(scatter.spread().start(), scatter.spread().tracks().stream()));
    }

    /** What each doubt alone contributes, measures under one another, a doubt a column. */
    public static Table parts(Scatter scatter) {
        List<Scatter.Row> rows = scatter.rows();
        List<Column> columns = new ArrayList<>();
        columns.add(words("measure", "Measure", rows, row -> row.quantity().heading()));
        for (int i = 0; i < scatter.spread().doubts().size(); i++) {
            int index = i;
            Setting doubt = scatter.spread().doubts().get(i).setting();
            columns.add(of(
                    doubt.key(),
                    doubt.quantity().label(),
                    rows,
                    row -> row.parts().at(index),
                    2));
        }
        return new Table(scatter.title() + ": what each contributes", columns, scatter.held(), scatter.cautions())
                .about(basis(scatter.spread().start(), scatter.spread().tracks().stream()));
    }

    /** A size a row: what it has, what it needs, and what follows. */
    public static Table of(Sized sized) {
        Measure<Ride> floor = sized.run().floor().measure();
        List<Column> columns = new ArrayList<>();
        columns.add(words(
                "bike", "Size", sized.sizes(), size -> size.asDrawn().bike().name()));
        columns.add(asDrawn(sized, floor));
        columns.add(asDrawn(sized, head()));
        Quantity needed = head().quantity().named(Inputs.HEAD_ANGLE.key(), "Head angle needed");
        columns.add(finer(needed(sized, needed, head())));
        columns.add(needed(sized, offset().quantity().named(Inputs.FORK_OFFSET.key(), "Offset"), offset()));
        Stream.concat(
                        Stream.of(floor),
                        sized.run().tracks().stream()
                                .filter(track -> !track.key().equals(floor.key())))
                .forEach(track -> columns.add(needed(sized, track.quantity(), track)));
        columns.add(words("note", "", sized.sizes(), StudyTables::note));
        return new Table(sized.title(), columns, sized.held(), sized.cautions())
                .about(Basis.of(
                        sized.sizes().stream().map(Sized.Size::asDrawn).toList(),
                        Stream.concat(Stream.of(floor), sized.run().tracks().stream())
                                .map(Measure::key)));
    }

    private static Basis basis(Ride ride, Stream<Measure<Ride>> measures) {
        return Basis.of(List.of(ride), measures.map(Measure::key));
    }

    private static String note(Sized.Size size) {
        return size.kept() ? "keeps its head angle" : size.reason();
    }

    private static Measure<Ride> head() {
        return Vocabulary.standard().tracked(Inputs.HEAD_ANGLE.key());
    }

    private static Measure<Ride> offset() {
        return Vocabulary.standard().tracked(Inputs.FORK_OFFSET.key());
    }

    private static Column asDrawn(Sized sized, Measure<Ride> measure) {
        Quantity quantity = measure.quantity();
        Column plain = Column.of(
                quantity,
                numbers(sized.sizes(), size -> measure.read(size.asDrawn()).orNaN()));
        return new Column(
                "asDrawn." + quantity.key(),
                quantity.label() + " as drawn",
                plain.unit(),
                plain.values(),
                plain.shown());
    }

    /** With two decimals: what is to be built, not what was measured. */
    private static Column finer(Column column) {
        return shown(column.key(), column.label(), column.unit(), column.values(), 2);
    }

    private static Column needed(Sized sized, Quantity quantity, Measure<Ride> measure) {
        return Column.of(
                quantity,
                numbers(
                        sized.sizes(),
                        size -> size.needed()
                                .map(ride -> measure.read(ride).orNaN())
                                .orElse(Double.NaN)));
    }

    private static Column solvedFor(Sought sought, Measure<Ride> measure) {
        return Column.of(
                measure.quantity(),
                numbers(
                        sought.solutions(),
                        solution -> measure.read(sought.seek().start().on(solution.bike()))
                                .orNaN()));
    }

    private static Numbers numbers(Sought sought, Setting setting) {
        return numbers(sought.solutions(), solution -> setting.valueIn(solution.bike()));
    }

    private static <T> Numbers numbers(List<T> rows, ToDoubleFunction<T> value) {
        return Numbers.generate(rows.size(), i -> value.applyAsDouble(rows.get(i)));
    }

    private static <T> Column words(String key, String label, List<T> rows, Function<T, String> word) {
        return Column.ofWords(key, label, rows.stream().map(word).toList());
    }

    private static <T> Column of(String key, String label, List<T> rows, ToDoubleFunction<T> value, int decimals) {
        return shown(key, label, "", numbers(rows, value), decimals);
    }

    private static Column shown(String key, String label, String unit, Numbers values, int decimals) {
        return new Column(
                key,
                label,
                unit,
                values,
                values.stream()
                        .mapToObj(value -> Decimals.fixed(value, decimals))
                        .toList());
    }
}
