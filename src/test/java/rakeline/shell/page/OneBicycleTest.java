package rakeline.shell.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.engine.Control;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.Session;
import rakeline.engine.State;
import rakeline.engine.jshell.Sessions;
import rakeline.figure.Basis;
import rakeline.figure.Chart;
import rakeline.figure.Column;
import rakeline.figure.Drawing;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.quantity.Quantity;
import rakeline.study.Vocabulary;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/**
 * A bundled page, wherever its dials and pickers stand, is about one bicycle under one rider: what its figures, and the
 * line below it, say of that bicycle is the same to the digit.
 */
@Tag("process")
@Tag("slow")
class OneBicycleTest {
    private static final int PLACES = Integer.getInteger("soak.pages", 2);
    private static final Path FOLDER = Path.of("worksheets");
    private static Session session;

    /** A number that a figure shows of a bicycle. */
    private record Shown(String row, Basis.Subject subject, String key, String number) {}

    @BeforeAll
    static void open() {
        session = Sessions.open(Session.Settings.standard());
    }

    @AfterAll
    static void close() {
        session.close();
    }

    static Stream<String> pagesWithToes() {
        return Stream.of("do-the-toes-clear", "shorter-cranks", "two-sizes-one-customer", "slack-head-angles");
    }

    static Stream<String> pages() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files
                    .map(file -> file.getFileName().toString().replace(WorksheetFile.EXTENSION, ""))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyFigureSaysTheSameOfTheSameBicycle(String name) throws Exception {
        for (PageModel page : placesOf(name)) {
            Map<String, List<Shown>> byKey = new LinkedHashMap<>();
            shown(page)
                    .forEach(number -> byKey.computeIfAbsent(number.key(), key -> new ArrayList<>())
                            .add(number));
            byKey.values().forEach(OneBicycleTest::agree);
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyChartWhosePlaceADialMovesIsOfTheBicycleAfterAllDials(String name) throws Exception {
        for (PageModel page : placesOf(name)) {
            Map<String, Double> bound = bound(page);
            assertThat(charts(page))
                    .filteredOn(chart -> bound.containsKey(chart.x().key()))
                    .allSatisfy(chart -> assertThat(chart.here())
                            .as(chart.title())
                            .isEqualTo(bound.get(chart.x().key())));
        }
    }

    @ParameterizedTest
    @MethodSource("pagesWithToes")
    void theLineBelowThePageSaysTheNumberOfTheDrawingBesideIt(String name) throws Exception {
        for (PageModel page : placesOf(name)) {
            Map<String, Drawing> beside = Beside.of(page);
            for (Control control : page.controls()) {
                DialEffect.of(page, control)
                        .filter(words -> words.startsWith("Toe room"))
                        .ifPresent(words ->
                                assertThat(words).isEqualTo("Toe room " + toeRoom(beside.get("Foot and wheel"))));
            }
        }
    }

    private static String toeRoom(Drawing foot) {
        Quantity room = Vocabulary.standard().quantity("toeRoomMm");
        return foot.columns().stream()
                .filter(column -> column.key().equals(room.key()))
                .map(column -> room.formatWithUnit(column.values().at(0)))
                .findFirst()
                .orElseThrow();
    }

    /** Every two numbers of one bicycle, whatever it is called. */
    private static void agree(List<Shown> numbers) {
        for (Shown one : numbers) {
            assertThat(numbers)
                    .filteredOn(other -> other.subject().isSameAs(one.subject()))
                    .allSatisfy(other ->
                            assertThat(other.number()).as(one + "\n" + other).isEqualTo(one.number()));
        }
    }

    private static List<Shown> shown(PageModel page) {
        return page.outcomes().stream()
                .flatMap(row -> figures(row).flatMap(figure -> shown(row.id(), figure)))
                .toList();
    }

    private static Stream<Figure> figures(Outcome row) {
        if (row.result().isEmpty()) {
            return Stream.empty();
        }
        Result result = row.result().get();
        return result instanceof Result.Shown some
                ? Stream.of(some.figure())
                : Beside.drawings(row).stream().map(drawing -> (Figure) drawing);
    }

    private static List<Chart> charts(PageModel page) {
        return page.outcomes().stream()
                .flatMap(OneBicycleTest::figures)
                .filter(Chart.class::isInstance)
                .map(Chart.class::cast)
                .toList();
    }

    private static Stream<Shown> shown(String row, Figure figure) {
        List<Basis.Subject> subjects = figure.basis().subjects();
        if (subjects.isEmpty()) {
            return Stream.empty();
        }
        if (figure instanceof Chart chart) {
            return chart.panels().stream()
                    .map(panel -> new Shown(
                            row,
                            subjects.get(0),
                            panel.quantity().key(),
                            panel.quantity().format(panel.here())));
        }
        return figure instanceof Drawing drawing
                ? shown(row, drawing, subjects)
                : figure instanceof Table table ? shown(row, table, subjects) : Stream.empty();
    }

    private static Stream<Shown> shown(String row, Drawing drawing, List<Basis.Subject> subjects) {
        return drawing.columns().stream()
                .filter(Column::isNumeric)
                .flatMap(column -> IntStream.range(0, subjects.size())
                        .mapToObj(i -> new Shown(
                                row,
                                subjects.get(i),
                                column.key(),
                                column.shown().get(i))));
    }

    /** A table of measures under one another, a bicycle a column. */
    private static Stream<Shown> shown(String row, Table table, List<Basis.Subject> subjects) {
        List<String> labels = table.columns().get(0).shown();
        return table.columns().get(0).key().equals("measure") && table.columns().size() == subjects.size() + 2
                ? IntStream.range(0, subjects.size())
                        .boxed()
                        .flatMap(i -> IntStream.range(0, labels.size())
                                .mapToObj(line -> new Shown(
                                        row,
                                        subjects.get(i),
                                        keyOf(labels.get(line)),
                                        table.columns().get(i + 1).shown().get(line))))
                : Stream.empty();
    }

    private static String keyOf(String label) {
        return Vocabulary.standard().quantities().stream()
                .filter(quantity -> quantity.label().equals(label))
                .map(Quantity::key)
                .findFirst()
                .orElse(label);
    }

    /** What the dials that are bound to an input stand at, by its key. */
    private static Map<String, Double> bound(PageModel page) {
        Map<String, Double> bound = new LinkedHashMap<>();
        for (Control control : page.controls()) {
            if (control instanceof Control.Dial dial && !dial.key().isEmpty()) {
                bound.put(dial.key(), dial.value());
            }
        }
        return bound;
    }

    /** The page as it is shipped, and with dials and pickers somewhere else. */
    private static List<PageModel> placesOf(String name) throws Exception {
        Worksheet page = WorksheetFile.read(Files.readAllBytes(FOLDER.resolve(name + WorksheetFile.EXTENSION)), name);
        List<PageModel> places = new ArrayList<>();
        PageModel first = run(page);
        places.add(first);
        for (long seed : LongStream.range(1, PLACES).toArray()) {
            places.add(run(moved(page, first, new Random(seed))));
        }
        return places;
    }

    private static Worksheet moved(Worksheet page, PageModel run, Random random) {
        Worksheet moved = page;
        for (Control control : run.controls()) {
            moved = control instanceof Control.Dial dial
                    ? moved.withDial(dial.name(), at(dial, random))
                    : moved.withPick(control.name(), any(((Control.Picker) control).paths(), random));
        }
        return moved;
    }

    private static double at(Control.Dial dial, Random random) {
        double steps = Math.floor((dial.max() - dial.min()) / dial.step());
        return dial.min() + Math.rint(random.nextDouble() * steps) * dial.step();
    }

    private static String any(List<String> paths, Random random) {
        return paths.get(random.nextInt(paths.size()));
    }

    /** Rows that a random bicycle or rider cannot have stay without a figure. */
    private static PageModel run(Worksheet page) throws InterruptedException {
        session.show(page);
        PageModel run = PageModel.of(page, new Origin.New(), true);
        for (Outcome outcome : session.settle()) {
            run = run.after(outcome);
        }
        assertThat(run.outcomes()).extracting(Outcome::state).contains(State.FRESH);
        return run.selecting(Optional.empty());
    }
}
