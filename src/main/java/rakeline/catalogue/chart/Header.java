package rakeline.catalogue.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import rakeline.quantity.Refusal;

/**
 * Where a chart's headings stand and what its fields hold.
 *
 * @param grid turned so that a line is a size
 * @param first the first line of numbers
 */
record Header(Grid grid, List<Field> fields, int first) {
    private static final int LOOKED_AT = 30;
    private static final int FEWEST = 2;
    private static final Set<String> OF_FRAME = Set.of("frame", "fork", "charted");
    private static final String OWN_SEAT_ANGLE = "frame.seatTubeAngleDeg";
    private static final String SEAT_ANGLE = "frame.seatAngleDeg";

    private record Found(Grid grid, int line, long known) {}

    Header {
        fields = List.copyOf(fields);
    }

    /**
     * The line, row or column, that holds the most headings which are known.
     *
     * @throws Refusal where none holds at least two
     */
    static Header of(Grid grid) {
        Found rows = best(grid);
        Found columns = best(grid.turned());
        Found best = columns.known() > rows.known() ? columns : rows;
        if (best.known() < FEWEST) {
            throw new Refusal("neither a row nor a column of the file holds headings that are known; accepted are the"
                    + " keys of a bike file, or words such as stack, reach, head angle, chainstay.");
        }
        return of(best);
    }

    /** Its lines of numbers; those without any text are passed over. */
    List<List<Cell>> sizes() {
        return grid.lines().stream()
                .skip(first)
                .filter(line -> fields.stream()
                        .anyMatch(field ->
                                field.isNumber() && !line.get(field.index()).isBlank()))
                .toList();
    }

    Optional<Field> field(Field.Role role) {
        return fields.stream().filter(field -> field.role() == role).findFirst();
    }

    private static Found best(Grid grid) {
        Found best = new Found(grid, 0, 0);
        for (int line = 0; line < Math.min(LOOKED_AT, grid.lines().size()); line++) {
            long known = fields(grid, line).stream().filter(Field::isNumber).count();
            best = known > best.known() ? new Found(grid, line, known) : best;
        }
        return best;
    }

    private static List<Field> fields(Grid grid, int line) {
        List<Cell> cells = grid.lines().get(line);
        return IntStream.range(0, cells.size())
                .mapToObj(i -> Field.of(i, cells.get(i)))
                .toList();
    }

    private static Header of(Found found) {
        int next = found.line() + 1;
        boolean units = next < found.grid().lines().size()
                && areUnits(found.grid().lines().get(next));
        List<Field> fields = fields(found.grid(), found.line());
        if (units) {
            List<Cell> line = found.grid().lines().get(next);
            fields = fields.stream()
                    .map(field -> field.in(unit(line.get(field.index()))))
                    .toList();
        }
        fields = inUnitOfChart(fields);
        return new Header(found.grid(), named(found.grid(), next, seatAngles(fields)), units ? next + 1 : next);
    }

    /** The heading of the headings, as in Geometry (cm), gives its unit to the frame's lengths without one of their own. */
    private static List<Field> inUnitOfChart(List<Field> fields) {
        Optional<ChartUnit> whole = fields.stream()
                .takeWhile(field -> !field.isNumber())
                .filter(field -> field.role() == Field.Role.LEFT_OUT)
                .flatMap(field -> field.unit().or(() -> unit(field.heading())).stream())
                .filter(unit -> !unit.isAngle())
                .findFirst();
        return fields.stream()
                .map(field -> isLengthOfFrame(field) ? field.in(whole) : field)
                .toList();
    }

    private static boolean isLengthOfFrame(Field field) {
        return field.isNumber() && field.byWord() && !field.isAngle() && OF_FRAME.contains(field.group());
    }

    private static boolean areUnits(List<Cell> line) {
        List<Cell> filled = line.stream().filter(cell -> !cell.isBlank()).toList();
        return filled.size() >= FEWEST
                && filled.stream().allMatch(cell -> unit(cell).isPresent() || isSpare(cell));
    }

    /** A word that may stand at the head of a line of units. */
    private static boolean isSpare(Cell cell) {
        return cell.text().strip().toLowerCase(Locale.ROOT).matches("units?");
    }

    private static Optional<ChartUnit> unit(Cell cell) {
        return ChartUnit.of(cell.text().strip().toLowerCase(Locale.ROOT).replaceAll("[()\\[\\]]", ""));
    }

    /** Of two seat angles, the one that is not called effective is the tube's own. */
    private static List<Field> seatAngles(List<Field> fields) {
        boolean effective = fields.stream().anyMatch(field -> isSeatAngle(field) && isEffective(field));
        return fields.stream()
                .map(field -> effective && isSeatAngle(field) && !isEffective(field)
                        ? field.as(Field.Role.NUMBER, OWN_SEAT_ANGLE)
                        : field)
                .toList();
    }

    private static boolean isSeatAngle(Field field) {
        return field.byWord() && field.key().equals(SEAT_ANGLE);
    }

    private static boolean isEffective(Field field) {
        return field.heading().text().toLowerCase(Locale.ROOT).matches(".*(eff|virtual|esta).*");
    }

    /** Where no heading says it, the last field before the numbers that holds text for the sizes names them. */
    private static List<Field> named(Grid grid, int next, List<Field> fields) {
        boolean known =
                fields.stream().anyMatch(field -> field.role() == Field.Role.NAME || field.role() == Field.Role.SIZE);
        int numbers = IntStream.range(0, fields.size())
                .filter(i -> fields.get(i).isNumber())
                .findFirst()
                .orElse(0);
        List<Field> named = new ArrayList<>(fields);
        for (int i = numbers - 1; i >= 0 && !known; i--) {
            known = namesSizes(fields.get(i), grid.after(next - 1, i));
            named.set(i, known ? fields.get(i).as(Field.Role.SIZE, "") : fields.get(i));
        }
        return named;
    }

    /** Without a heading any text will do, under an unknown one what is not a number. */
    private static boolean namesSizes(Field field, List<Cell> cells) {
        List<Cell> filled = cells.stream().filter(cell -> !cell.isBlank()).toList();
        boolean words = filled.stream()
                .noneMatch(cell -> DecimalMark.Figure.of(cell.text()).isPresent());
        return field.role() == Field.Role.LEFT_OUT
                && !filled.isEmpty()
                && (field.heading().isBlank() || words);
    }
}
