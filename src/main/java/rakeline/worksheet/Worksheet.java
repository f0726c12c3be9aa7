package rakeline.worksheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rakeline.quantity.Refusal;

/**
 * A saved document of notes and snippets. Every edit is a function from one worksheet to the next.
 *
 * @param title one line
 * @param audience {@code for} in the file
 * @param answers ids of the questions it answers
 * @param rack paths of the bikes at hand
 * @param rows in page order, each with an id of its own
 * @param dials stored dial values by variable name; finite
 * @param picks stored picker paths by variable name
 */
public record Worksheet(
        String title,
        String about,
        Optional<Audience> audience,
        List<String> answers,
        View view,
        List<String> rack,
        List<Row> rows,
        Map<String, Double> dials,
        Map<String, String> picks) {

    /** For whom. */
    public enum Audience {
        EDUCATOR,
        FITTER,
        STUDENT
    }

    /** The view it opens in. */
    public enum View {
        WRITE,
        READ
    }

    /** @throws Refusal where two rows share an id, a dial or a pick has no variable's name, or a dial is not finite */
    public Worksheet {
        answers = List.copyOf(answers);
        rack = List.copyOf(rack);
        rows = List.copyOf(rows);
        dials = Collections.unmodifiableMap(new LinkedHashMap<>(dials));
        picks = Collections.unmodifiableMap(new LinkedHashMap<>(picks));
        checkIds(rows);
        dials.forEach(Names::checkDial);
        picks.keySet().forEach(Names::checked);
    }

    private static void checkIds(List<Row> rows) {
        Map<String, Long> counts = rows.stream().collect(Collectors.groupingBy(Row::id, Collectors.counting()));
        counts.forEach((id, count) -> {
            if (count > 1) {
                throw new Refusal("the row id \"" + id + "\" stands " + count + " times; each row has one of its own.");
            }
        });
    }

    public static Worksheet empty(String title) {
        return new Worksheet(
                title, "", Optional.empty(), List.of(), View.WRITE, List.of(), List.of(), Map.of(), Map.of());
    }

    public Worksheet withTitle(String newTitle) {
        return new Worksheet(newTitle, about, audience, answers, view, rack, rows, dials, picks);
    }

    public Worksheet withAbout(String newAbout) {
        return new Worksheet(title, newAbout, audience, answers, view, rack, rows, dials, picks);
    }

    public Worksheet withAudience(Optional<Audience> newAudience) {
        return new Worksheet(title, about, newAudience, answers, view, rack, rows, dials, picks);
    }

    public Worksheet withAnswers(List<String> newAnswers) {
        return new Worksheet(title, about, audience, newAnswers, view, rack, rows, dials, picks);
    }

    public Worksheet withView(View newView) {
        return new Worksheet(title, about, audience, answers, newView, rack, rows, dials, picks);
    }

    public Worksheet withRack(List<String> newRack) {
        return new Worksheet(title, about, audience, answers, view, newRack, rows, dials, picks);
    }

    public Worksheet withRows(List<Row> newRows) {
        return new Worksheet(title, about, audience, answers, view, rack, newRows, dials, picks);
    }

    public Worksheet withDials(Map<String, Double> newDials) {
        return new Worksheet(title, about, audience, answers, view, rack, rows, newDials, picks);
    }

    public Worksheet withPicks(Map<String, String> newPicks) {
        return new Worksheet(title, about, audience, answers, view, rack, rows, dials, newPicks);
    }

    public Worksheet withDial(String name, double value) {
        return withDials(put(dials, name, value));
    }

    public Worksheet withPick(String name, String path) {
        return withPicks(put(picks, name, path));
    }

    private static <V> Map<String, V> put(Map<String, V> before, String name, V value) {
        Map<String, V> changed = new LinkedHashMap<>(before);
        changed.put(name, value);
        return changed;
    }

    /** The row of this id, if there is one. */
    public Optional<Row> row(String id) {
        return rows.stream().filter(row -> row.id().equals(id)).findFirst();
    }

    /**
     * The place of a row, from 0.
     *
     * @throws Refusal where no row has this id
     */
    public int indexOf(String id) {
        return IntStream.range(0, rows.size())
                .filter(i -> rows.get(i).id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refusal("the page has no row \"" + id + "\"."));
    }

    /** An id that no row has: {@code r} and one more than the highest number in use, so that the same page gives the same. */
    public String freshId() {
        return "r"
                + (1
                        + rows.stream()
                                .mapToInt(row -> Names.number(row.id()))
                                .max()
                                .orElse(0));
    }

    /** With a row put at a place from 0, or at the end where the place lies beyond it. */
    public Worksheet insert(int index, Row row) {
        return changed(list -> {
            list.add(Math.max(0, Math.min(index, list.size())), row);
            return list;
        });
    }

    /**
     * With a row put below another.
     *
     * @throws Refusal where no row has the id
     */
    public Worksheet insertAfter(String id, Row row) {
        return insert(indexOf(id) + 1, row);
    }

    /**
     * Without a row; stored dial values stay.
     *
     * @throws Refusal where no row has the id
     */
    public Worksheet without(String id) {
        int index = indexOf(id);
        return changed(list -> {
            list.remove(index);
            return list;
        });
    }

    /**
     * With a row moved to a place from 0, the other rows keeping their order; beyond an end is that end.
     *
     * @throws Refusal where no row has the id
     */
    public Worksheet move(String id, int toIndex) {
        return without(id).insert(toIndex, rows.get(indexOf(id)));
    }

    /**
     * With this row in place of the one that has its id.
     *
     * @throws Refusal where no row has the id
     */
    public Worksheet withRow(Row row) {
        int index = indexOf(row.id());
        return changed(list -> {
            list.set(index, row);
            return list;
        });
    }

    /**
     * With another text in a row.
     *
     * @throws Refusal where no row has the id
     */
    public Worksheet withText(String id, String text) {
        return withRow(rows.get(indexOf(id)).withText(text));
    }

    private Worksheet changed(UnaryOperator<List<Row>> edit) {
        return withRows(edit.apply(new ArrayList<>(rows)));
    }
}
