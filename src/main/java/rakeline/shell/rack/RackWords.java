package rakeline.shell.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rakeline.quantity.Caution;
import rakeline.quantity.Input;
import rakeline.quantity.Reading;
import rakeline.shell.look.Numerals;
import rakeline.study.Residual;

/** What the rack says in words of a bike and of a cell. */
final class RackWords {
    private RackWords() {}

    /** How a bike stands, in a few words. */
    static String state(RackRow row, RackReading reading) {
        if (row.isUnread()) {
            return "cannot be read";
        }
        if (!row.missing().isEmpty()) {
            return "needs " + needs(row.missing());
        }
        if (reading.disagreements() > 0) {
            return reading.disagreements() == 1
                    ? "one charted number disagrees"
                    : reading.disagreements() + " charted numbers disagree";
        }
        return row.isBundled()
                ? "comes with the program"
                : row.place()
                        .map(place -> String.valueOf(place.file().getFileName()))
                        .orElse("");
    }

    private static String needs(List<Input> missing) {
        String small = Labels.within(missing.get(0).quantity().label());
        return missing.size() == 1 ? small : small + " and " + (missing.size() - 1) + " more";
    }

    /** All that is to be said of a bike, for who points at its name. */
    static String whole(RackRow row, RackReading reading, LengthUnit lengths) {
        List<String> sentences = new ArrayList<>();
        if (row.isUnread()) {
            sentences.add(row.trouble());
        }
        if (!row.missing().isEmpty()) {
            sentences.add("To save what is typed, this bike still needs "
                    + row.missing().stream()
                            .map(input -> Labels.within(input.quantity().label()))
                            .collect(Collectors.joining("; "))
                    + ".");
        }
        if (row.isBundled()) {
            sentences.add("It comes with the program and is read only; a change makes a copy of your own.");
        }
        row.place().ifPresent(place -> sentences.add("Its file: " + place.file()));
        sentences.addAll(reading.sentences(lengths));
        return row.name() + ". " + String.join(" ", sentences);
    }

    /** What a cell is about and how its number stands. */
    static String cell(RackRow row, RackColumn column, RackReading reading, LengthUnit lengths) {
        return Numerals.withUnit(spoken(row, column, reading, lengths), "")
                + " "
                + (column.isTyped() ? ofTyped(row, column, reading, lengths) : ofMeasure(column, reading));
    }

    /** Bike, label, value and unit, as they are read aloud. */
    static String spoken(RackRow row, RackColumn column, RackReading reading, LengthUnit lengths) {
        RackCell cell = RackCell.of(row, column, reading, lengths);
        String value = cell.text().isEmpty() ? "none" : Numerals.withUnit(cell.text(), column.unitIn(lengths));
        return row.name() + ", " + column.quantity().label() + ": " + value
                + (cell.note().isEmpty() ? "" : ", " + cell.note()) + ".";
    }

    private static String ofTyped(RackRow row, RackColumn column, RackReading reading, LengthUnit lengths) {
        List<String> sentences = new ArrayList<>();
        sentences.add(column.quantity().definition());
        reading.disagreement(column).ifPresent(residual -> sentences.add(disagreement(residual, column, lengths)));
        if (reading.disagreement(column).isPresent()) {
            sentences.addAll(reading.sentences(lengths));
        }
        if (row.isWaiting(column)) {
            sentences.add("It waits until these are typed too: "
                    + row.missing().stream()
                            .map(input -> input.quantity().label())
                            .collect(Collectors.joining(", "))
                    + ".");
        }
        if (!row.isGiven(column) && !Double.isNaN(row.value(column))) {
            sentences.add("Not given; this is taken in its place.");
        }
        sentences.add("Accepted is " + column.accepted(lengths) + ".");
        return String.join(" ", sentences);
    }

    /** The derived number, the difference, and what rounding explains of it. */
    private static String disagreement(Residual residual, RackColumn column, LengthUnit lengths) {
        int decimals = residual.quantity().decimals();
        String unit = column.unitIn(lengths);
        return "The other numbers give " + Numerals.withUnit(lengths.show(residual.derived(), decimals + 1), unit)
                + "; the chart is " + RackCell.apart(residual, column, lengths) + ", of which rounding explains "
                + Numerals.withUnit(lengths.show(residual.tolerance(), decimals + 1), unit) + ".";
    }

    private static String ofMeasure(RackColumn column, RackReading reading) {
        String definition = column.quantity().definition();
        String cautions = String.join(
                " ",
                column.quantity().cautions().stream().map(Caution::sentence).toList());
        String reason = Optional.ofNullable(reading.measures().get(column.key()))
                .filter(measured -> !(measured instanceof Reading.Known))
                .map(measured -> "No number: it " + measured.reason() + ".")
                .orElse("");
        return String.join(" ", List.of(definition, reason, cautions)).strip();
    }
}
