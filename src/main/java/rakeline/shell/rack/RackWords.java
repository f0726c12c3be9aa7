package rakeline.shell.rack;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.geometry.Inputs;
import rakeline.quantity.Caution;
import rakeline.quantity.Input;
import rakeline.quantity.Reading;
import rakeline.shell.look.Numerals;
import rakeline.study.Residual;

/** What the rack says in words of a bike and of a cell. */
final class RackWords {
    private RackWords() {}

    /** How a bike stands, in a few words. */
    static String state(RackBike row, RackReading reading) {
        if (row.isUnread()) {
            return row.isBeingRead() ? "being read" : "cannot be read";
        }
        if (!row.filed().failure().isEmpty()) {
            return "not written";
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
    static String whole(RackBike row, RackReading reading, LengthUnit lengths) {
        List<String> sentences = new ArrayList<>();
        if (row.isUnread()) {
            sentences.add(row.trouble());
        }
        if (!row.missing().isEmpty()) {
            sentences.add("To save what is typed, this bike still needs " + Gaps.words(row.missing().stream()) + ".");
        }
        if (row.isBundled()) {
            sentences.add("It comes with the program and is read only; a change makes a copy of your own.");
        }
        row.place().ifPresent(place -> sentences.add("Its file: " + place.file()));
        if (!row.filed().failure().isEmpty()) {
            sentences.add("What was typed is not written yet: " + row.filed().failure());
        }
        List<String> gaps = Gaps.of(row, reading.measures().values());
        if (!gaps.isEmpty()) {
            sentences.add("For all that is computed in the table it lacks " + String.join(", ", gaps) + ".");
        }
        sentences.addAll(reading.sentences(lengths));
        return row.name() + ". " + String.join(" ", sentences);
    }

    /** What a cell is about and how its number stands. */
    static String cell(RackBike row, RackColumn column, RackReading reading, LengthUnit lengths) {
        return Numerals.withUnit(spoken(row, column, reading, lengths), "")
                + " "
                + (column.isTyped() ? ofTyped(row, column, reading, lengths) : ofMeasure(row, column, reading));
    }

    /** Bike, label, value and unit, as they are read aloud. */
    static String spoken(RackBike row, RackColumn column, RackReading reading, LengthUnit lengths) {
        RackCell cell = RackCell.of(row, column, reading, lengths);
        String value = cell.text().isEmpty() ? "none" : Numerals.withUnit(cell.text(), column.unitIn(lengths));
        return row.name() + ", " + column.quantity().label() + ": " + value
                + (cell.note().isEmpty() ? "" : ", " + cell.note()) + ".";
    }

    private static String ofTyped(RackBike row, RackColumn column, RackReading reading, LengthUnit lengths) {
        List<String> sentences = new ArrayList<>();
        sentences.add(column.quantity().definition());
        reading.disagreement(column).ifPresent(residual -> sentences.add(disagreement(residual, column, lengths)));
        if (reading.disagreement(column).isPresent()) {
            sentences.addAll(reading.sentences(lengths));
        }
        if (row.isWaiting(column)) {
            sentences.add("It waits until these are typed too: " + Gaps.words(row.missing().stream()) + ".");
        }
        if (row.open().contains(column.key())) {
            sentences.add("It was not entered: open the cell and press Enter to enter it, Escape to take it back.");
        }
        if (column.key().equals(Inputs.BB_DROP.key()) && row.value(column) < 0) {
            sentences.add("Caution: the bottom bracket is " + column.withUnit(-row.value(column), lengths)
                    + " above the axles; where it is below them, the drop is typed without a minus.");
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

    private static String ofMeasure(RackBike row, RackColumn column, RackReading reading) {
        String definition = column.quantity().definition();
        String cautions = String.join(
                " ",
                column.quantity().cautions().stream().map(Caution::sentence).toList());
        String reason = Optional.ofNullable(reading.measures().get(column.key()))
                .filter(measured -> !(measured instanceof Reading.Known))
                .map(measured -> noNumber(row, measured))
                .orElse("");
        return String.join(" ", List.of(definition, reason, cautions)).strip();
    }

    private static String noNumber(RackBike row, Reading measured) {
        return measured instanceof Reading.Lacking
                ? "No number: " + row.name() + " lacks " + String.join(", ", Gaps.of(row, List.of(measured))) + "."
                : "No number: it " + Labels.in(measured.reason()) + ".";
    }

    /** What a bike lacks for measures, all of it at once and in words. */
    private static final class Gaps {
        private static final String GROUP = "the group ";
        private static final String OR = " or ";

        private Gaps() {}

        static List<String> of(RackBike row, Collection<Reading> readings) {
            return readings.stream()
                    .filter(Reading.Lacking.class::isInstance)
                    .flatMap(reading -> lacking(row, ((Reading.Lacking) reading).what()))
                    .distinct()
                    .toList();
        }

        private static Stream<String> lacking(RackBike row, String what) {
            if (!what.startsWith(GROUP)) {
                return Stream.of(Labels.of(what));
            }
            String groups = what.substring(GROUP.length()).replaceAll(" with .*", "");
            return Stream.of(groups.split(OR, -1)).flatMap(group -> inputs(row, group));
        }

        private static Stream<String> inputs(RackBike row, String group) {
            List<Input> needed = Inputs.all().stream()
                    .filter(input -> input.group().equals(group) || group.startsWith(input.group() + "."))
                    .filter(input -> input.presence() instanceof Input.Presence.Required)
                    .filter(input -> row.bike().filter(bike -> bike.has(input)).isEmpty())
                    .toList();
            return needed.isEmpty() ? Stream.of(group) : needed.stream().map(Gaps::word);
        }

        static String words(Stream<Input> inputs) {
            return inputs.map(Gaps::word).distinct().collect(Collectors.joining(", "));
        }

        private static String word(Input input) {
            return Labels.within(input.quantity().label());
        }
    }
}
