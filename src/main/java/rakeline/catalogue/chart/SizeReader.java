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
import java.util.function.UnaryOperator;
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
    private final List<ChartImport.Doubt> leftOut = new ArrayList<>();
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

    /** The cells that are not plain and that the size can do without. */
    List<ChartImport.Doubt> leftOut() {
        return leftOut;
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
        List<ChartImport.Doubt> found = doubts.subList(before, doubts.size());
        if (!found.isEmpty() && field.isSpare()) {
            leftOut.addAll(found);
            found.clear();
        } else if (!found.isEmpty()) {
            doubted.add(field.key());
        }
    }

    private void readFilled(Field field, Cell cell) {
        switch (field.role()) {
            case NUMBER -> number(field, cell);
            case ORIGIN -> origin(field, cell);
            case UNCERTAINTY ->
                notNegative(cell, "uncertainty").ifPresent(u -> know(field, of -> of.withUncertainty(u)));
            case STEP -> notNegative(cell, "step").ifPresent(step -> know(field, of -> of.withStep(step)));
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
        Optional<ChartUnit> unit = field.unit(figure);
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
                        from -> know(field, of -> of.from(from)),
                        () -> doubt(cell, "is no origin; accepted are charted, measured, assumed, solved."));
    }

    private Optional<Double> notNegative(Cell cell, String what) {
        Optional<BigDecimal> digits = DecimalMark.Figure.of(cell.text())
                .flatMap(figure -> mark.read(figure.digits()))
                .filter(number -> number.signum() >= 0);
        if (digits.isEmpty()) {
            doubt(cell, "is no " + what + "; accepted is a number from 0 up.");
        }
        return digits.map(BigDecimal::doubleValue);
    }

    private void know(Field field, UnaryOperator<Provenance> more) {
        provenance.put(field.key(), more.apply(provenance.getOrDefault(field.key(), Provenance.NOTHING)));
    }

    private void doubt(Cell cell, String reason) {
        doubts.add(ChartImport.Doubt.of(cell, reason));
    }
}
