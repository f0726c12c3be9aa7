package rakeline.catalogue.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/** Reads a maker's chart, or a table of bikes with a header of keys. */
public final class ChartFile {
    /** Beyond this size in bytes a chart is refused. */
    public static final long SIZE_LIMIT = 1_000_000;

    /** What may follow from other cells, and from which. */
    private static final Map<String, Input> SOLVED_FROM = Map.of(
            Inputs.STACK.key(), Inputs.AXLE_TO_CROWN,
            Inputs.REACH.key(), Inputs.CHARTED_EFFECTIVE_TOP_TUBE,
            Inputs.BB_DROP.key(), Inputs.CHARTED_BB_HEIGHT);

    private final Header header;
    private final ChartImport.Wanted wanted;
    private final List<Bike> bikes = new ArrayList<>();
    private final List<ChartImport.Doubt> doubtsOfAll = new ArrayList<>();
    private final List<ChartImport.Doubt> doubts = new ArrayList<>();
    private final Map<String, Set<String>> notes = new LinkedHashMap<>();
    private final Map<List<String>, List<String>> lacking = new LinkedHashMap<>();
    private final Map<String, Field> used = new LinkedHashMap<>();
    private final List<ChartImport.Doubt> leftOut = new ArrayList<>();

    private ChartFile(Header header, ChartImport.Wanted wanted) {
        this.header = header;
        this.wanted = wanted;
    }

    /**
     * Reads a chart.
     *
     * @param file as named to the person in a refusal
     * @throws Refusal for what is no chart at all; cells that are not plain become doubts
     */
    public static ChartImport read(byte[] bytes, String file, ChartImport.Wanted wanted) {
        try {
            return new ChartFile(Header.of(CsvText.parse(bytes)), wanted).read();
        } catch (Refusal e) {
            throw e.in(file);
        }
    }

    private ChartImport read() {
        List<List<Cell>> sizes = header.sizes();
        if (sizes.isEmpty()) {
            throw new Refusal("there is no number below or beside the headings.");
        }
        header.fields().forEach(this::use);
        DecimalMark mark = mark(sizes);
        PrintedSteps steps = PrintedSteps.of(used.values(), sizes, mark);
        for (int i = 0; i < sizes.size(); i++) {
            size(sizes.get(i), name(sizes.get(i), i), mark, steps);
        }
        lacking.forEach(this::tellMissing);
        leaveOutDoubledNames();
        doubts.addAll(0, doubtsOfAll);
        return new ChartImport(doubtsOfAll.isEmpty() ? bikes : List.of(), understood(), leftOut, told(), doubts);
    }

    private void use(Field field) {
        if (field.role() == Field.Role.LEFT_OUT) {
            leaveOut(field, ChartWords.reason(field.heading().text()));
            return;
        }
        if (isOfIncompleteGroup(field)) {
            leaveOut(field, "the other numbers of its group are not given.");
            return;
        }
        Field former = used.putIfAbsent(field.role() + field.key(), field);
        if (former != null && !field.role().equals(Field.Role.SIZE)) {
            doubtsOfAll.add(ChartImport.Doubt.of(
                    field.heading(), "says the same as " + former.heading().place() + "; accepted is one of them."));
        }
    }

    private void leaveOut(Field field, String reason) {
        if (!field.heading().isBlank()) {
            leftOut.add(ChartImport.Doubt.of(field.heading(), reason));
            return;
        }
        header.sizes().stream()
                .map(line -> line.get(field.index()))
                .filter(cell -> !cell.isBlank())
                .forEach(cell -> leftOut.add(ChartImport.Doubt.of(cell, "it has no heading.")));
    }

    private DecimalMark mark(List<List<Cell>> sizes) {
        return DecimalMark.of(sizes.stream()
                .flatMap(
                        line -> header.fields().stream().filter(Field::isNumber).map(field -> line.get(field.index())))
                .toList());
    }

    private String name(List<Cell> line, int index) {
        Optional<String> whole = text(line, Field.Role.NAME);
        Optional<String> size = text(line, Field.Role.SIZE);
        String own = whole.or(() -> size.map(String::strip)).orElseGet(() -> wanted.file() + " " + (index + 1));
        String of = whole.isPresent() && size.isPresent()
                ? own.strip() + " " + size.get().strip()
                : own;
        return wanted.series().isEmpty() ? of : wanted.series() + " " + of.strip();
    }

    private Optional<String> text(List<Cell> line, Field.Role role) {
        return header.field(role)
                .map(field -> line.get(field.index()).text())
                .filter(text -> !text.isBlank())
                .map(text -> text.replaceAll("[\r\n]+", " "));
    }

    private void size(List<Cell> line, String name, DecimalMark mark, PrintedSteps steps) {
        SizeReader reader = new SizeReader(mark);
        header.fields().stream()
                .filter(field -> used.containsValue(field))
                .forEach(field -> reader.read(field, line.get(field.index())));
        doubts.addAll(reader.doubts());
        leftOut.addAll(reader.leftOut());
        if (reader.doubts().isEmpty()) {
            bike(line, name, reader, steps);
        } else {
            emptyBeside(line, reader);
        }
    }

    /** In a size that has a doubtful cell already, the cells that are empty and needed. */
    private void emptyBeside(List<Cell> line, SizeReader reader) {
        missing(reader.values()).stream()
                .filter(key -> !reader.doubted().contains(key) && !mayBeSolved(key))
                .forEach(key -> cell(line, key)
                        .ifPresent(empty -> doubts.add(ChartImport.Doubt.of(empty, isMissing(List.of(key))))));
    }

    private void bike(List<Cell> line, String name, SizeReader reader, PrintedSteps steps) {
        Map<Input, Double> values = new HashMap<>(reader.values());
        Map<String, Provenance> provenance = new HashMap<>(reader.provenance());
        steps.say(values, provenance);
        wanted.set().forEach((input, value) -> {
            values.put(input, input.quantity().check(value));
            provenance.put(input.key(), Provenance.of(Provenance.Origin.ASSUMED));
        });
        try {
            List<String> closed = Closing.close(values, provenance);
            List<String> missing = missing(values);
            if (!missing.isEmpty()) {
                lacks(line, name, missing);
                return;
            }
            bikes.add(Bike.of(name, Entries.none().with(values), reader.groups(), provenance));
            closed.forEach(note -> note(note, name));
        } catch (Refusal e) {
            doubts.add(new ChartImport.Doubt(place(line), name, e.getMessage()));
        }
    }

    private String place(List<Cell> line) {
        Cell first = line.get(0);
        boolean row = first.row() == line.get(line.size() - 1).row();
        return row ? "row " + first.row() : "column " + first.column();
    }

    /** A group of which a chart does not say all stays away, but for what {@link Closing} assumes. */
    private boolean isOfIncompleteGroup(Field field) {
        if (!field.isNumber() || !field.byWord()) {
            return false;
        }
        String group = field.group();
        return !Bike.NEEDED_GROUPS.contains(group)
                && required(group).anyMatch(input -> !isSaid(input) && !Closing.ASSUMED.containsKey(input));
    }

    private boolean isSaid(Input input) {
        return wanted.set().containsKey(input)
                || header.fields().stream()
                        .anyMatch(field ->
                                field.isNumber() && field.setting().inputs().contains(input));
    }

    private static Stream<Input> required(String group) {
        return Inputs.all().stream()
                .filter(input -> input.group().equals(group) && input.presence() instanceof Input.Presence.Required);
    }

    /** What a size lacks, both wheels in one word. */
    private static List<String> missing(Map<Input, Double> values) {
        List<String> groups = Stream.concat(
                        Bike.NEEDED_GROUPS.stream(), values.keySet().stream().map(Input::group))
                .distinct()
                .toList();
        return groups.stream()
                .flatMap(ChartFile::required)
                .filter(input -> !values.containsKey(input))
                .map(input -> input.key().replaceFirst("^wheels\\.(front|rear)\\.", "wheels.both."))
                .distinct()
                .sorted()
                .toList();
    }

    /** What a size lacks: each number at its empty cell, or where the chart has none for it, among the others. */
    private void lacks(List<Cell> line, String name, List<String> missing) {
        List<String> nowhere = new ArrayList<>();
        for (String key : missing) {
            Optional<Cell> cell = cell(line, key);
            cell.ifPresentOrElse(
                    empty -> doubts.add(ChartImport.Doubt.of(empty, isMissing(List.of(key)))), () -> nowhere.add(key));
        }
        if (!nowhere.isEmpty()) {
            lacking.computeIfAbsent(nowhere, any -> new ArrayList<>()).add(name);
        }
    }

    private boolean mayBeSolved(String key) {
        return SOLVED_FROM.containsKey(key) && isSaid(SOLVED_FROM.get(key));
    }

    private Optional<Cell> cell(List<Cell> line, String key) {
        return used.values().stream()
                .filter(field -> field.isNumber() && field.key().equals(key))
                .map(field -> line.get(field.index()))
                .findFirst();
    }

    private void tellMissing(List<String> keys, List<String> names) {
        doubts.add(new ChartImport.Doubt("", String.join(", ", names), isMissing(keys)));
    }

    private static String isMissing(List<String> keys) {
        boolean open = keys.contains(Inputs.STACK.key()) || keys.contains(Inputs.REACH.key());
        String instead =
                open ? "; instead of stack and reach, effective top tube, head tube and fork length would do" : "";
        return String.join(", ", keys) + (keys.size() == 1 ? " is missing" : " are missing") + instead + ".";
    }

    private void note(String note, String name) {
        notes.computeIfAbsent(note, any -> new LinkedHashSet<>()).add(name);
    }

    private List<String> told() {
        return notes.entrySet().stream()
                .map(entry -> String.join(", ", entry.getValue()) + ": " + entry.getKey() + ".")
                .toList();
    }

    private List<ChartImport.Understood> understood() {
        return used.values().stream().map(ChartFile::understood).toList();
    }

    private static ChartImport.Understood understood(Field field) {
        String key = field.key().isEmpty() ? "name" : field.key();
        String usual = field.isNumber() && field.isAngle() ? ChartUnit.DEGREE.word() : ChartUnit.MILLIMETRE.word();
        String unit = field.isNumber() ? field.unit().map(ChartUnit::word).orElse(usual) : "";
        return new ChartImport.Understood(
                field.heading().place(), field.heading().text().strip(), key, unit);
    }

    private void leaveOutDoubledNames() {
        Set<String> met = new HashSet<>();
        Set<String> doubled = bikes.stream()
                .map(Bike::name)
                .filter(name -> !met.add(name))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        doubled.forEach(name -> doubts.add(new ChartImport.Doubt(
                "", name, "is the name of more than one size; accepted is a name of its own for each.")));
        bikes.removeIf(bike -> doubled.contains(bike.name()));
    }
}
