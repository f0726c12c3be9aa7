package rakeline.shell.rack;

import java.util.Optional;
import rakeline.geometry.Provenance;
import rakeline.quantity.Decimals;
import rakeline.quantity.Reading;
import rakeline.shell.look.Numerals;
import rakeline.study.Residual;

/**
 * What a cell says.
 *
 * @param text the number without unit, or empty
 * @param note a word or two beneath it
 * @param mark how it stands, beside what the words say
 */
record RackCell(String text, String note, Mark mark) {
    /** How a cell's number stands. */
    enum Mark {
        /** Given in the file. */
        GIVEN,
        /** A default, or computed. */
        DERIVED,
        /** Charted, and other numbers say another. */
        DISAGREES,
        /** Typed, and its group is not whole yet. */
        WAITS,
        /** Nothing. */
        NONE
    }

    static RackCell of(RackBike row, RackColumn column, RackReading reading, LengthUnit lengths) {
        return column.isTyped() ? typed(row, column, reading, lengths) : measured(column, reading, lengths);
    }

    private static RackCell typed(RackBike row, RackColumn column, RackReading reading, LengthUnit lengths) {
        double value = row.value(column);
        if (row.open().contains(column.key())) {
            return new RackCell(Double.isNaN(value) ? "" : column.show(value, lengths), "not entered", Mark.WAITS);
        }
        if (Double.isNaN(value)) {
            return new RackCell(
                    "", row.missing().contains(column.setting().inputs().get(0)) ? "missing" : "", Mark.NONE);
        }
        String text = column.show(value, lengths);
        if (row.isWaiting(column)) {
            return new RackCell(text, "waits", Mark.WAITS);
        }
        if (!row.isGiven(column)) {
            return new RackCell(text, "taken", Mark.DERIVED);
        }
        return reading.disagreement(column)
                .map(residual -> new RackCell(text, apart(residual, column, lengths), Mark.DISAGREES))
                .orElseGet(() -> new RackCell(text, origin(row, column, lengths), Mark.GIVEN));
    }

    /** By how much a charted number is over or under the derived one. */
    static String apart(Residual residual, RackColumn column, LengthUnit lengths) {
        double size = Math.abs(residual.residual());
        String shown = lengths.show(size, residual.quantity().decimals());
        return Numerals.withUnit(shown, column.unitIn(lengths)) + (residual.residual() > 0 ? " over" : " under");
    }

    private static String origin(RackBike row, RackColumn column, LengthUnit lengths) {
        String key = column.setting().inputs().get(0).key();
        return Optional.ofNullable(row.bike().orElseThrow().provenance().get(key))
                .map(provenance -> origin(provenance, column, lengths))
                .orElse("");
    }

    private static String origin(Provenance provenance, RackColumn column, LengthUnit lengths) {
        double u = provenance.standardUncertainty();
        if (!Double.isNaN(u)) {
            return "± " + column.show(u, lengths);
        }
        return provenance.from().map(Provenance.Origin::word).orElse("");
    }

    private static RackCell measured(RackColumn column, RackReading reading, LengthUnit lengths) {
        Reading measured = reading.measures().get(column.key());
        if (measured == null) {
            return new RackCell("", "", Mark.NONE);
        }
        return measured instanceof Reading.Known known
                ? new RackCell(column.show(known.value(), lengths), "", Mark.DERIVED)
                : new RackCell(Decimals.fixed(Double.NaN, 0), "", Mark.NONE);
    }
}
