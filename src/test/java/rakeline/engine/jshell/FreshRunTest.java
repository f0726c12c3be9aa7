package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.engine.Session;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** After any series of edits, moves, deletions and dial moves the page equals a fresh run from the top. */
@Tag("process")
@Tag("slow")
class FreshRunTest {
    private static final int STEPS = 12;

    /** A page that runs whole, each row in several versions: they define, use, change, shadow, fail, print, clash. */
    private static final List<List<String>> ROWS = List.of(
            List.of("import java.time.Duration;", "import java.time.*;", "int loose = 3;"),
            List.of(
                    "double head = dial(\"Head\", \"°\", 60, 80, 0.5, 71);",
                    "double head = dial(\"Head\", \"°\", 50, 70, 0.5, 61);",
                    "double head = 70.5;",
                    "int head = 68;"),
            List.of("double seat = dial(\"Seat\", \"°\", 60, head + 5, 0.5, 62);", "double seat = head - 1;"),
            List.of("double sum = head + seat;", "double sum = head - seat;", "String sum = \"h\" + head;"),
            List.of(
                    "List<Double> list = new ArrayList<>();",
                    "List<Double> list = new ArrayList<>(List.of(1.0, 2.0));",
                    "List<Double> list = List.of(5.0);"),
            List.of("list.add(seat);", "list.add(list.size() * 1.0);\nlist", "list.size()"),
            List.of("List<Double> alias = list;", "var alias = new ArrayList<>(list);"),
            List.of("alias.clear();\nalias.add(seat);", "alias.add(0, head * 1.0);", "sum"),
            List.of("double total = 0;", "double total = alias.size();"),
            List.of("for (int i = 0; i < 3; i++) total += head;", "total = seat;", "total++"),
            List.of("total + list.size()", "\"\" + total + list + alias"),
            List.of(
                    "double twice(double x) { return 2 * x; }",
                    "double twice(double x) { return 2 * x + total; }",
                    "int twice(double x) { return (int) x; }",
                    "double twice(double x) { total += x; return total; }"),
            List.of("double four = twice(twice(head));", "var four = twice(seat);"),
            List.of(
                    "record Pair(double a, double b) {}",
                    "class Pair { static int made; double a, b; Pair(double a, double b) { this.a = a; this.b = b;"
                            + " made++; } public String toString() { return a + \"/\" + b + \"/\" + made; } }"),
            List.of("var pair = new Pair(head, total);", "var pair = new Pair(total, four);"),
            List.of("pair", "pair + \"\" + new Pair(1, 2)"),
            List.of("Runnable bump = () -> total++;", "Runnable bump = () -> list.clear();"),
            List.of("bump.run();", "bump.run();\nbump.run();\nSystem.out.println(total);"),
            List.of("Duration.ofSeconds((long) head).toString()", "Duration.ofSeconds(list.size())"),
            List.of("System.out.println(head + \" \" + total);", "int late = head > 69 ? 1 : 2;"),
            List.of("int crash = 1 / (head > 70 ? 0 : 1);", "int crash = 2;", "int crash = \"x\";"),
            List.of("crash + 1", "missing + crash"),
            List.of("int[] cells = {1, 2, 3};", "int[] cells = new int[(int) seat];"),
            List.of("cells[1] += 10;", "Arrays.fill(cells, 4);", "for (int cell : cells) total += cell;"),
            List.of("Arrays.stream(cells).sum()", "cells"),
            List.of("double max(double a, double b) { return -1; }", "double mean(double a, double b) { return 7; }"),
            List.of("max(head, seat)", "max(total, 1)"),
            List.of("var random = new Random(7);", "var random = new Random((long) head);"),
            List.of("random.nextInt(100)", "total += random.nextInt(100);"),
            List.of("total", "random.nextInt(50)"));

    private static Running edited;
    private static Running fresh;

    @BeforeAll
    static void open() {
        edited = new Running(Session.Settings.standard().withoutStandby());
        fresh = new Running(Session.Settings.standard());
    }

    @AfterAll
    static void close() {
        edited.close();
        fresh.close();
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 7, 11, 14})
    void afterAnySeriesOfEdits(long seed) throws InterruptedException {
        Random random = new Random(seed);
        Worksheet page = start(random);
        for (int step = 0; step < STEPS; step++) {
            page = step(page, random);
            edited.run(page);
        }
        fresh.session().show(page);
        fresh.session().runAll();
        fresh.settle();
        assertThat(edited.outcomes()).as(() -> "seed " + seed).isEqualTo(fresh.outcomes());
    }

    private static Worksheet start(Random random) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < ROWS.size(); i++) {
            if (random.nextInt(3) > 0) {
                rows.add(Pages.row(i + "a", version(i, random)));
            }
        }
        return Pages.of(rows.toArray(Row[]::new));
    }

    private static Worksheet step(Worksheet page, Random random) {
        List<Row> rows = new ArrayList<>(page.rows());
        int at = random.nextInt(rows.size());
        switch (random.nextInt(14)) {
            case 0 -> rows.add(random.nextInt(rows.size()), rows.remove(at));
            case 1 -> rows.add(at, anyRow(random, page));
            case 2 -> rows.remove(at);
            case 3, 7, 8 -> repair(rows, random);
            case 4, 5, 6 -> {
                return moved(page, random);
            }
            default -> rows.set(at, rows.get(at).withText(version(family(rows.get(at)), random)));
        }
        return page.withRows(rows);
    }

    /** Puts rows in their sensible order, each kind once, and one that is missing back. */
    private static void repair(List<Row> rows, Random random) {
        Map<Integer, Row> byFamily = new TreeMap<>();
        rows.forEach(row -> byFamily.put(family(row), row));
        int family = random.nextInt(ROWS.size());
        byFamily.computeIfAbsent(
                family, any -> Pages.row(family + "c" + random.nextInt(1_000_000), version(any, random)));
        rows.clear();
        rows.addAll(byFamily.values());
    }

    private static Row anyRow(Random random, Worksheet page) {
        int family = random.nextInt(ROWS.size());
        return Pages.row(family + "b" + page.rows().size() + random.nextInt(1_000_000), version(family, random));
    }

    private static int family(Row row) {
        return Integer.parseInt(row.id().replaceFirst("\\D.*", ""));
    }

    private static String version(int family, Random random) {
        List<String> versions = ROWS.get(family);
        return versions.get(random.nextInt(versions.size()));
    }

    private static Worksheet moved(Worksheet page, Random random) {
        Map<String, Double> dials = new HashMap<>(page.dials());
        dials.put(random.nextBoolean() ? "head" : "seat", 60 + random.nextInt(20) * 1.0);
        return page.withDials(dials);
    }
}
