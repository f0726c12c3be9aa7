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

    private static final Set<String> NEEDED = Set.of("frame", "fork", "wheels.front", "wheels.rear");

    private final Header header;
    private final ChartImport.Wanted wanted;
    private final List<Bike> bikes = new ArrayList<>();
    private final List<ChartImport.Doubt> doubts = new ArrayList<>();
    private final Map<String, Set<String>> notes = new LinkedHashMap<>();
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
        for (int i = 0; i < sizes.size(); i++) {
            size(sizes.get(i), name(sizes.get(i), i), mark);
        }
        checkNames();
        return new ChartImport(bikes, understood(), leftOut, told(), doubts);
    }

    private void use(Field field) {
        if (field.role() == Field.Role.LEFT_OUT) {
            leaveOut(field, ChartWords.reason(field.heading().text()));
            return;
        }
        Field former = used.putIfAbsent(field.role() + field.key(), field);
        if (former != null && !field.role().equals(Field.Role.SIZE)) {
            doubts.add(ChartImport.Doubt.of(
                    field.heading(), "says the same as " + former.heading().place() + "; accepted is one of them."));
        }
    }

    private void leaveOut(Field field, String reason) {
        if (!field.heading().isBlank()) {
            leftOut.add(ChartImport.Doubt.of(field.heading(), reason));
        }
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

    private void size(List<Cell> line, String name, DecimalMark mark) {
        SizeReader reader = new SizeReader(mark);
        header.fields().stream()
                .filter(field -> used.containsValue(field))
                .forEach(field -> reader.read(field, line.get(field.index())));
        doubts.addAll(reader.doubts());
        if (reader.doubts().isEmpty()) {
            bike(line, name, reader);
        }
    }

    private void bike(List<Cell> line, String name, SizeReader reader) {
        Map<Input, Double> values = new HashMap<>(reader.values());
        Map<String, Provenance> provenance = new HashMap<>(reader.provenance());
        wanted.set().forEach((input, value) -> {
            values.put(input, input.quantity().check(value));
            provenance.put(input.key(), Provenance.of(Provenance.Origin.ASSUMED));
        });
        try {
            List<String> closed = Closing.close(values, provenance);
            leaveOutIncomplete(values, provenance);
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

    /** A chart says a crank's length and no stance: a group of which it does not say all stays away. */
    private void leaveOutIncomplete(Map<Input, Double> values, Map<String, Provenance> provenance) {
        Set<String> incomplete = new HashSet<>();
        Set<String> there = new HashSet<>();
        values.keySet().stream()
                .map(Input::group)
                .filter(group -> !NEEDED.contains(group))
                .forEach(there::add);
        Inputs.all().stream()
                .filter(input -> input.presence() instanceof Input.Presence.Required)
                .filter(input -> there.contains(input.group()) && !values.containsKey(input))
                .forEach(input -> incomplete.add(input.group()));
        Set<Input> away = new HashSet<>(values.keySet());
        away.removeIf(input -> !incomplete.contains(input.group()) || !isByWord(input));
        away.forEach(input -> leaveOut(input, values, provenance));
    }

    private void leaveOut(Input input, Map<Input, Double> values, Map<String, Provenance> provenance) {
        values.remove(input);
        provenance.remove(input.key());
        Field field = used.remove(Field.Role.NUMBER + input.key());
        if (field != null) {
            leaveOut(field, "the other numbers of the group " + input.group() + " are not given.");
        }
    }

    private boolean isByWord(Input input) {
        return header.fields().stream()
                .anyMatch(field -> field.byWord() && field.key().equals(input.key()));
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

    private void checkNames() {
        Set<String> names = new HashSet<>();
        bikes.stream()
                .map(Bike::name)
                .filter(name -> !names.add(name))
                .distinct()
                .forEach(name -> doubts.add(new ChartImport.Doubt("", name, "is the name of more than one size.")));
    }
}
