package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/**
 * One thing that a person does, or that happens. What it does follows from the page and the deed alone, so that a
 * history stays one when deeds are taken out of it.
 *
 * @param at which row, counted round
 * @param seed for all else that is chosen
 */
record Deed(Kind kind, int at, long seed) {
    /** What is done. */
    enum Kind {
        EDIT,
        RETYPE,
        FAIL,
        LOOP,
        MUTATE,
        ADD,
        DELETE,
        MOVE,
        REPAIR,
        UNDO,
        REDO,
        DIAL,
        WAIT,
        RUN,
        STOP,
        DEATH
    }

    private static final List<Kind> USUAL = List.of(
            Kind.EDIT,
            Kind.EDIT,
            Kind.EDIT,
            Kind.RETYPE,
            Kind.RETYPE,
            Kind.FAIL,
            Kind.MUTATE,
            Kind.ADD,
            Kind.DELETE,
            Kind.MOVE,
            Kind.REPAIR,
            Kind.REPAIR,
            Kind.REPAIR,
            Kind.UNDO,
            Kind.UNDO,
            Kind.REDO,
            Kind.DIAL,
            Kind.DIAL,
            Kind.DIAL,
            Kind.STOP,
            Kind.DEATH,
            Kind.LOOP,
            Kind.WAIT,
            Kind.RUN,
            Kind.RUN);
    private static final List<Integer> NUMBERS = List.of(1, 3, 10);

    /** A history: so many deeds. */
    static List<Deed> history(Random random, int count) {
        return IntStream.range(0, count)
                .mapToObj(
                        i -> new Deed(USUAL.get(random.nextInt(USUAL.size())), random.nextInt(1000), random.nextLong()))
                .toList();
    }

    /** The page that a history starts from: most kinds of rows, in their sensible order. */
    static Worksheet start(long seed, Map<String, Small.Text> language) {
        Random random = new Random(seed);
        List<Row> rows = new ArrayList<>();
        for (int kind = 0; kind < Author.KINDS; kind++) {
            if (random.nextInt(4) > 0) {
                rows.add(row(kind, "s", written(new Author(random).row(kind), language)));
            }
        }
        return Worksheet.empty("History").withRows(rows);
    }

    /** Another version of the page; the same where this deed is none of its. */
    Worksheet applied(Worksheet page, Map<String, Small.Text> language) {
        List<Row> rows = new ArrayList<>(page.rows());
        Random random = new Random(seed);
        int place = rows.isEmpty() ? 0 : at % rows.size();
        switch (kind) {
            case EDIT -> set(rows, place, text(rows, place, random, language));
            case RETYPE -> retype(rows, random, language);
            case FAIL -> set(rows, place, written(Small.Text.of(List.of(Pieces.show(failing()))), language));
            case LOOP -> set(rows, place, written(Small.Text.of(List.of(Pieces.endless())), language));
            case MUTATE -> rows.add(place, added(random.nextBoolean() ? 5 : 11, random, language));
            case ADD -> rows.add(place, added(random.nextInt(Author.KINDS), random, language));
            case DELETE -> remove(rows, place);
            case MOVE -> move(rows, place, random);
            case REPAIR -> repair(rows, random, language);
            case WAIT -> wait(rows, place);
            case DIAL -> {
                return page.withDial("d", random.nextInt(24) / 2.0);
            }
            default -> {}
        }
        return page.withRows(rows);
    }

    /** The row that is asked to run; none where one waits, which running another would start. */
    Optional<String> run(Worksheet page) {
        boolean waits = page.rows().stream().anyMatch(row -> row instanceof Row.Snippet snippet && snippet.waits());
        return kind != Kind.RUN || waits || page.rows().isEmpty()
                ? Optional.empty()
                : Optional.of(page.rows().get(at % page.rows().size()).id());
    }

    private static Small.Phrase failing() {
        return Phrases.over(Phrases.number(1), Phrases.number(0));
    }

    private static void set(List<Row> rows, int place, String text) {
        if (!rows.isEmpty()) {
            Row.Snippet row = (Row.Snippet) rows.get(place).withText(text);
            boolean loops = text.startsWith("while");
            rows.set(place, row.withTimeLimit(loops ? OptionalInt.of(1) : OptionalInt.empty()));
        }
    }

    private String text(List<Row> rows, int place, Random random, Map<String, Small.Text> language) {
        int family = rows.isEmpty() ? 0 : kind(rows.get(place));
        return written(new Author(random).row(family), language);
    }

    private void retype(List<Row> rows, Random random, Map<String, Small.Text> language) {
        List<Integer> places = IntStream.range(0, rows.size())
                .filter(i -> NUMBERS.contains(kind(rows.get(i))))
                .boxed()
                .toList();
        if (!places.isEmpty()) {
            int place = places.get(at % places.size());
            set(rows, place, text(rows, place, random, language));
        }
    }

    private Row added(int kind, Random random, Map<String, Small.Text> language) {
        return row(kind, "n" + Long.toUnsignedString(seed, 36), written(new Author(random).row(kind), language));
    }

    private static void remove(List<Row> rows, int place) {
        if (!rows.isEmpty()) {
            rows.remove(place);
        }
    }

    private static void move(List<Row> rows, int place, Random random) {
        if (!rows.isEmpty()) {
            rows.add(random.nextInt(rows.size()), rows.remove(place));
        }
    }

    private static void wait(List<Row> rows, int place) {
        if (!rows.isEmpty() && rows.get(place) instanceof Row.Snippet snippet) {
            rows.set(place, snippet.waiting(!snippet.waits()));
        }
    }

    /** Puts rows in their sensible order, each kind once, with one that may be missing, and starts them all. */
    private void repair(List<Row> rows, Random random, Map<String, Small.Text> language) {
        Map<Integer, Row> byKind = new TreeMap<>();
        rows.forEach(row -> byKind.putIfAbsent(kind(row), ((Row.Snippet) row).waiting(false)));
        int missing = random.nextInt(Author.KINDS);
        byKind.computeIfAbsent(missing, any -> added(missing, random, language));
        rows.clear();
        rows.addAll(byKind.values());
    }

    private static Row row(int kind, String mark, String text) {
        return Pages.row(kind + "-" + mark, text);
    }

    private static int kind(Row row) {
        return Integer.parseInt(row.id().substring(0, row.id().indexOf('-')));
    }

    private static String written(Small.Text text, Map<String, Small.Text> language) {
        language.put(text.java(), text);
        return text.java();
    }
}
