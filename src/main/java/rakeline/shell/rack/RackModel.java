package rakeline.shell.rack;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import rakeline.quantity.Refusal;

/** The rack as it is looked at: its columns, the unit of lengths, its bikes. Never changes; every edit gives another. */
public record RackModel(List<RackColumn> columns, LengthUnit lengths, List<RackRow> rows) {
    /** The numbers that are shown until a person chooses others. */
    public static final List<String> USUAL = List.of(
            "frame.stackMm",
            "frame.reachMm",
            "frame.headAngleDeg",
            "frame.seatAngleDeg",
            "frame.chainstayMm",
            "frame.bbDropMm",
            "fork.offsetMm",
            "wheels.both.beadSeatMm",
            "wheels.both.tyreMm",
            "charted.wheelbaseMm",
            "charted.trailMm",
            "trailMm",
            "wheelbaseMm",
            "frontCentreMm",
            "toeRoomMm",
            "crank.lengthMm",
            "cockpit.stemLengthMm",
            "cockpit.stemAngleDeg",
            "cockpit.spacersMm",
            "handXMm",
            "handYMm");

    public RackModel {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** No bikes, the usual columns, millimetres. */
    public static RackModel empty() {
        return new RackModel(USUAL.stream().map(RackColumn::of).toList(), LengthUnit.MILLIMETRE, List.of());
    }

    public RackModel withColumns(List<String> keys) {
        return new RackModel(keys.stream().map(RackColumn::of).toList(), lengths, rows);
    }

    public RackModel in(LengthUnit unit) {
        return new RackModel(columns, unit, rows);
    }

    public RackModel withRows(List<RackRow> newRows) {
        return new RackModel(columns, lengths, newRows);
    }

    /** The keys of the measures among its columns. */
    List<String> measured() {
        return columns.stream()
                .filter(column -> !column.isTyped())
                .map(RackColumn::key)
                .toList();
    }

    Optional<RackRow> row(String id) {
        return rows.stream().filter(row -> row.id().equals(id)).findFirst();
    }

    /** With another row in the place of the one with this id; the same where there is none. */
    RackModel with(String id, RackRow other) {
        return withRows(
                rows.stream().map(row -> row.id().equals(id) ? other : row).toList());
    }

    /**
     * With what was typed in a cell.
     *
     * @throws Refusal in one sentence, where it cannot stand there
     */
    public RackModel type(int row, RackColumn column, String text) {
        return with(rows.get(row).id(), edit(column, text).apply(rows.get(row)));
    }

    /**
     * What typing in a column does to a bike.
     *
     * @throws Refusal where it is no number of this column
     */
    UnaryOperator<RackRow> edit(RackColumn column, String text) {
        if (!column.isTyped()) {
            throw new Refusal(column.quantity().label() + " is computed; change a number that it follows from.");
        }
        Optional<Typed> typed = Typed.read(text, column, lengths);
        return row -> typed.map(number -> row.type(column, number)).orElseGet(() -> row.clear(column));
    }

    /** Whether a text is what the cell shows already. */
    boolean isShown(RackRow row, RackColumn column, String text) {
        return text.strip().equals(shown(row, column));
    }

    /** The number in a cell as it is put into the field that it is typed in. */
    String shown(RackRow row, RackColumn column) {
        double value = row.isGiven(column) ? row.value(column) : Double.NaN;
        return Double.isNaN(value) ? "" : column.show(value, lengths);
    }

    /**
     * What a block of cells, copied from a spreadsheet, does to the bikes from a cell on: all of it or nothing.
     *
     * @param block lines of fields parted by tabs
     * @return each bike that is changed, in the order of the rows
     * @throws Refusal for the first cell that cannot stand, or a block that reaches beyond the rack
     */
    List<RackRow> paste(int row, int column, String block) {
        List<String> lines = block.stripTrailing().lines().toList();
        if (row + lines.size() > rows.size()) {
            throw new Refusal("What is pasted has " + lines.size() + " lines; from this row on the rack has "
                    + (rows.size() - row) + ".");
        }
        return IntStream.range(0, lines.size())
                .mapToObj(i ->
                        pasted(rows.get(row + i), column, List.of(lines.get(i).split("\t", -1))))
                .toList();
    }

    private RackRow pasted(RackRow row, int column, List<String> fields) {
        if (column + fields.size() > columns.size()) {
            throw new Refusal("What is pasted has " + fields.size() + " columns; from this one on the rack has "
                    + (columns.size() - column) + ".");
        }
        RackRow changed = row;
        for (int i = 0; i < fields.size(); i++) {
            changed = edit(columns.get(column + i), fields.get(i)).apply(changed);
        }
        return changed;
    }

    /** A name that no bike of the rack has: this one, or with a number behind it. */
    String freshName(String name) {
        Set<String> taken = new HashSet<>();
        rows.forEach(row -> taken.add(row.name()));
        String free = name;
        for (int i = 2; taken.contains(free); i++) {
            free = name + " " + i;
        }
        return free;
    }

    /** An id for a bike that has no file yet. */
    String freshId() {
        Set<String> taken = new HashSet<>();
        rows.forEach(row -> taken.add(row.id()));
        int number = 1;
        while (taken.contains("new " + number)) {
            number++;
        }
        return "new " + number;
    }

    /** With a bike behind the others. */
    RackModel and(RackRow row) {
        List<RackRow> more = new ArrayList<>(rows);
        more.add(row);
        return withRows(more);
    }
}
