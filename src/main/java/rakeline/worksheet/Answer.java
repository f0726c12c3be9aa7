package rakeline.worksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Folded rows that follow one another: the answer to what stands above them. Readers do not see its text, its values and
 * its figures until they open it.
 *
 * @param rows one at least, in page order
 */
public record Answer(List<Row> rows) {
    public Answer {
        rows = List.copyOf(rows);
    }

    /** The answers of a page, in page order. */
    public static List<Answer> of(Worksheet page) {
        List<Answer> answers = new ArrayList<>();
        List<Row> open = new ArrayList<>();
        for (Row row : page.rows()) {
            if (row.folded()) {
                open.add(row);
            } else if (!open.isEmpty()) {
                answers.add(new Answer(open));
                open.clear();
            }
        }
        if (!open.isEmpty()) {
            answers.add(new Answer(open));
        }
        return List.copyOf(answers);
    }

    /** The answer that a row belongs to; none for a row that is not folded. */
    public static Optional<Answer> holding(Worksheet page, String row) {
        return of(page).stream().filter(answer -> answer.ids().contains(row)).findFirst();
    }

    /** The ids of its rows. */
    public List<String> ids() {
        return rows.stream().map(Row::id).toList();
    }

    /** Whether a row is its first. */
    public boolean beginsWith(String row) {
        return ids().get(0).equals(row);
    }
}
