package rakeline.catalogue.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rakeline.geometry.Provenance;
import rakeline.quantity.Decimals;
import rakeline.quantity.Input;
import rakeline.quantity.Range;

/** Reads the cells of one size; what is not plain becomes a doubt. */
final class SizeReader {
    private static final Set<String> NOTHING = Set.of("", "-", "–", "—", "n/a", "na", "N/A");

    private final DecimalMark mark;
    private final Map<Input, Double> values = new LinkedHashMap<>();
    private final Map<String, Provenance> provenance = new HashMap<>();
    private final Set<String> groups = new HashSet<>();
    private final List<ChartImport.Doubt> doubts = new ArrayList<>();
    private final Set<String> doubted = new HashSet<>();

    SizeReader(DecimalMark mark) {
        this.mark = mark;
    }

    Map<Input, Double> values() {
        return values;
    }

    Map<String, Provenance> provenance() {
        return provenance;
    }

    Set<String> groups() {
        return groups;
    }

    List<ChartImport.Doubt> doubts() {
        return doubts;
    }

    /** The keys whose cells are doubtful. */
    Set<String> doubted() {
        return doubted;
    }

    void read(Field field, Cell cell) {
        int before = doubts.size();
        if (!NOTHING.contains(cell.text().strip())) {
            readFilled(field, cell);
        }
        if (doubts.size() > before) {
            doubted.add(field.key());
        }
    }

    private void readFilled(Field field, Cell cell) {
        switch (field.role()) {
            case NUMBER -> number(field, cell);
            case ORIGIN -> origin(field, cell);
            case UNCERTAINTY -> uncertainty(field, cell);
            case GROUP -> groups.add(field.key());
            default -> {}
        }
    }

    private void number(Field field, Cell cell) {
        if (field.byWord() && isWheel(field)) {
            wheel(field, cell);
            return;
        }
        Optional<DecimalMark.Figure> figure = DecimalMark.Figure.of(cell.text());
        if (figure.isEmpty()) {
            doubt(cell, "is not a number.");
        } else {
            number(field, cell, figure.get());
        }
    }

    private void number(Field field, Cell cell, DecimalMark.Figure figure) {
        Optional<BigDecimal> digits = mark.read(figure.digits());
        Optional<ChartUnit> unit = unit(field, figure);
        if (digits.isEmpty()) {
            doubt(cell, "uses another decimal mark than the rest of the chart, which has " + mark.word() + ".");
        } else if (unit.isEmpty()) {
            doubt(cell, "has a unit that is none of " + field.key() + ".");
        } else if (field.byWord() && mayMeanThousands(field, figure, unit.get())) {
            doubt(cell, "may be " + digits.get() + " or thousands; accepted is a number without marks for thousands.");
        } else {
            put(field, cell, unit.get().convert(digits.get()));
        }
    }

    /** The cell's own unit, else the field's, else millimetres or degrees; empty where it does not fit the number. */
    private static Optional<ChartUnit> unit(Field field, DecimalMark.Figure figure) {
        ChartUnit usual = field.isAngle() ? ChartUnit.DEGREE : ChartUnit.MILLIMETRE;
        return ChartUnit.of(figure.unit())
                .or(field::unit)
                .or(() -> Optional.of(usual))
                .filter(unit -> unit.isAngle() == field.isAngle());
    }

    private static boolean mayMeanThousands(Field field, DecimalMark.Figure figure, ChartUnit unit) {
        String whole = figure.digits().replaceAll("[.,]", "");
        return DecimalMark.mayBeThousands(figure.digits())
                && accepted(field).contains(unit.convert(new BigDecimal(whole)));
    }

    private void put(Field field, Cell cell, double value) {
        Range accepted = accepted(field);
        if (!accepted.contains(value)) {
            doubt(
                    cell,
                    "is " + Decimals.shortest(value) + " for " + field.key() + "; accepted is " + accepted + " "
                            + field.setting().quantity().unit().symbol() + hint(field, value) + ".");
        } else if (saysOther(field, value)) {
            doubt(cell, "says another number than a cell before it.");
        } else {
            field.setting().inputs().forEach(input -> put(input, value + 0.0, field.byWord()));
        }
    }

    private boolean saysOther(Field field, double value) {
        return field.setting().inputs().stream()
                .anyMatch(input -> values.containsKey(input) && values.get(input) != value);
    }

    private void put(Input input, double value, boolean byWord) {
        values.put(input, value);
        if (byWord) {
            provenance.put(input.key(), Provenance.of(Provenance.Origin.CHARTED));
        }
    }

    private static String hint(Field field, double value) {
        if (field.isAngle() || field.unit().isPresent()) {
            return "";
        }
        List<String> fitting = Stream.of(ChartUnit.CENTIMETRE, ChartUnit.INCH)
                .filter(unit -> accepted(field).contains(unit.convert(BigDecimal.valueOf(value))))
                .map(ChartUnit::word)
                .toList();
        return fitting.isEmpty() ? "" : "; " + String.join(" or ", fitting) + " in the heading would make it fit";
    }

    private static Range accepted(Field field) {
        return field.setting().quantity().accepted();
    }

    private static boolean isWheel(Field field) {
        return field.key().endsWith("beadSeatMm") || field.key().endsWith("tyreMm");
    }

    /** A wheel by its name; a tyre by its width, or by the name of wheel and tyre. */
    private void wheel(Field field, Cell cell) {
        boolean tyre = field.key().endsWith("tyreMm");
        Optional<WheelName> wheel = WheelName.of(cell.text().replace(',', '.'));
        Optional<BigDecimal> width = wheel.flatMap(WheelName::tyreMm);
        if (tyre && width.isEmpty()) {
            DecimalMark.Figure.of(cell.text().replaceAll("(?i)\\s*c$", ""))
                    .ifPresentOrElse(figure -> number(field, cell, figure), () -> doubt(cell, "is not a tyre."));
        } else if (wheel.isEmpty()) {
            doubt(cell, "is not a wheel size that is known; accepted is the bead-seat diameter, or 700c, 650b, 29.");
        } else {
            named(field, cell, wheel.get());
        }
    }

    private void named(Field field, Cell cell, WheelName wheel) {
        String both = field.key().substring(0, field.key().lastIndexOf('.') + 1);
        put(field.as(Field.Role.NUMBER, both + "beadSeatMm"), cell, wheel.beadSeatMm());
        wheel.tyreMm().ifPresent(width -> put(field.as(Field.Role.NUMBER, both + "tyreMm"), cell, width.doubleValue()));
    }

    private void origin(Field field, Cell cell) {
        String word = cell.text().strip();
        Arrays.stream(Provenance.Origin.values())
                .filter(from -> from.word().equals(word))
                .findFirst()
                .ifPresentOrElse(
                        from -> from(field.key(), from),
                        () -> doubt(cell, "is no origin; accepted are charted, measured, assumed, solved."));
    }

    private void from(String key, Provenance.Origin from) {
        provenance.merge(key, Provenance.of(from), (old, now) -> new Provenance(now.from(), old.standardUncertainty()));
    }

    private void uncertainty(Field field, Cell cell) {
        Optional<BigDecimal> digits = DecimalMark.Figure.of(cell.text()).flatMap(figure -> mark.read(figure.digits()));
        if (digits.isEmpty() || digits.get().signum() < 0) {
            doubt(cell, "is no uncertainty; accepted is a number from 0 up.");
            return;
        }
        double u = digits.get().doubleValue();
        provenance.merge(field.key(), new Provenance(Optional.empty(), u), (old, now) -> new Provenance(old.from(), u));
    }

    private void doubt(Cell cell, String reason) {
        doubts.add(ChartImport.Doubt.of(cell, reason));
    }
}
