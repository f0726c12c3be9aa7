package rakeline.catalogue.chart;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.quantity.Input;

/**
 * The steps to which a chart rounds its numbers, read off the digits it prints.
 *
 * <p>A column steps by its last printed digit. Where all its numbers end in such a way, angles and inches step by
 * halves, quarters or eighths; these are read off all angles, or all inches, where a column shows too few numbers or
 * none with a decimal. Millimetres and centimetres step by five of the last digit where a column shows that in
 * numbers enough that do not lie evenly, or the whole chart does; numbers that lie evenly were drawn so.
 */
final class PrintedSteps {
    private static final int FEW = 3;
    private static final int ENOUGH = 4;
    private static final Set<String> GROUPS = Set.of("frame", "fork", "charted");
    private static final List<Integer> BINARY_PARTS = List.of(125, 25, 5);

    private final Map<Field, Double> steps;

    private PrintedSteps(Map<Field, Double> steps) {
        this.steps = steps;
    }

    /** Different numbers, and the most digits that any has behind its decimal mark. */
    private record Printed(Set<BigDecimal> numbers, int decimals) {
        static Printed of(Stream<BigDecimal> printed) {
            List<BigDecimal> all = printed.toList();
            return new Printed(
                    new TreeSet<>(all), all.stream().mapToInt(BigDecimal::scale).reduce(0, Math::max));
        }

        static Printed of(List<Column> columns) {
            List<Printed> all = columns.stream().map(Column::printed).toList();
            return new Printed(
                    all.stream().flatMap(one -> one.numbers.stream()).collect(Collectors.toCollection(TreeSet::new)),
                    all.stream().mapToInt(Printed::decimals).reduce(0, Math::max));
        }

        BigDecimal digits(int count) {
            return BigDecimal.valueOf(count, decimals);
        }

        boolean stepBy(BigDecimal step) {
            return numbers.stream().allMatch(number -> number.remainder(step).signum() == 0);
        }

        boolean stepByFives() {
            return stepBy(digits(5));
        }

        boolean lieEvenly() {
            Set<BigDecimal> gaps = new TreeSet<>();
            BigDecimal before = null;
            for (BigDecimal number : numbers) {
                if (before != null) {
                    gaps.add(number.subtract(before));
                }
                before = number;
            }
            return gaps.size() == 1;
        }

        /** The largest eighth, quarter or half that all are multiples of and that shows in the digits, else the last digit. */
        BigDecimal binaryPart() {
            return BINARY_PARTS.stream()
                    .filter(part -> String.valueOf(part).length() <= decimals)
                    .map(this::digits)
                    .filter(this::stepBy)
                    .findFirst()
                    .orElseGet(() -> digits(1));
        }
    }

    private record Column(Field field, ChartUnit unit, Printed printed) {
        /** Empty where its cells are in several units. */
        static Optional<Column> of(Field field, List<List<Cell>> sizes, DecimalMark mark) {
            List<DecimalMark.Figure> figures = sizes.stream()
                    .flatMap(line ->
                            DecimalMark.Figure.of(line.get(field.index()).text()).stream())
                    .toList();
            Set<ChartUnit> units = figures.stream()
                    .flatMap(figure -> field.unit(figure).stream())
                    .collect(Collectors.toSet());
            Printed printed = Printed.of(figures.stream().flatMap(figure -> mark.read(figure.digits()).stream()));
            return units.size() == 1
                    ? Optional.of(new Column(field, units.iterator().next(), printed))
                    : Optional.empty();
        }

        BigDecimal step(List<Column> alike) {
            return unit.isAngle() || unit == ChartUnit.INCH ? binaryPart(alike) : decimalPart(alike);
        }

        private BigDecimal binaryPart(List<Column> alike) {
            boolean shows = printed.numbers().size() >= FEW && printed.decimals() > 0;
            return (shows ? printed : Printed.of(alike)).binaryPart();
        }

        private BigDecimal decimalPart(List<Column> alike) {
            Printed whole = Printed.of(alike);
            boolean sameDigits = printed.decimals() == whole.decimals() || unit == ChartUnit.CENTIMETRE;
            if (sameDigits && whole.numbers().size() >= ENOUGH && whole.stepByFives()) {
                return whole.digits(5);
            }
            return printed.digits(printed.stepByFives() && showsFives() ? 5 : 1);
        }

        private boolean showsFives() {
            return printed.numbers().size() >= ENOUGH && !printed.lieEvenly();
        }
    }

    static PrintedSteps of(Collection<Field> fields, List<List<Cell>> sizes, DecimalMark mark) {
        Map<ChartUnit, List<Column>> byUnit = fields.stream()
                .filter(PrintedSteps::isRounded)
                .flatMap(field -> Column.of(field, sizes, mark).stream())
                .collect(Collectors.groupingBy(Column::unit, LinkedHashMap::new, Collectors.toList()));
        Map<Field, Double> steps = new LinkedHashMap<>();
        byUnit.values()
                .forEach(columns -> columns.forEach(
                        column -> steps.put(column.field(), column.unit().convert(column.step(columns)))));
        return new PrintedSteps(steps);
    }

    private static boolean isRounded(Field field) {
        return field.isNumber() && field.byWord() && GROUPS.contains(field.group());
    }

    /** Adds to a size what its chart's steps are, and to its numbers those that differ from them. */
    void say(Map<Input, Double> values, Map<String, Provenance> provenance) {
        say(Inputs.CHARTED_STEP_MM, false, values, provenance);
        say(Inputs.CHARTED_STEP_DEG, true, values, provenance);
    }

    private void say(Input whole, boolean angle, Map<Input, Double> values, Map<String, Provenance> provenance) {
        Map<Field, Double> printed = new HashMap<>(steps);
        printed.keySet().removeIf(field -> field.isAngle() != angle);
        if (printed.isEmpty() || values.containsKey(whole)) {
            return;
        }
        double most = within(whole, most(printed.values()));
        if (!whole.presence().equals(Input.byDefault(most))) {
            values.put(whole, most);
        }
        printed.entrySet().stream()
                .filter(column -> column.getValue() != most)
                .forEach(column -> say(column.getKey(), column.getValue(), provenance));
    }

    private static void say(Field field, double step, Map<String, Provenance> provenance) {
        field.setting()
                .inputs()
                .forEach(input -> provenance.computeIfPresent(input.key(), (key, from) -> from.withStep(step)));
    }

    private static double within(Input whole, double step) {
        return Math.min(
                whole.quantity().accepted().to(),
                Math.max(whole.quantity().accepted().from(), step));
    }

    /** The step of most columns, of several the coarsest. */
    private static double most(Collection<Double> all) {
        Map<Double, Long> counts =
                all.stream().collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return counts.entrySet().stream()
                .max(Comparator.comparing(Map.Entry<Double, Long>::getValue).thenComparing(Map.Entry::getKey))
                .orElseThrow()
                .getKey();
    }
}
