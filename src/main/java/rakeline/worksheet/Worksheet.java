package rakeline.worksheet;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A saved document of notes and snippets.
 *
 * @param dials stored dial values by variable name
 * @param picks stored picker paths by variable name
 * @param rack paths of the bikes at hand
 * @param answers ids of the questions it answers
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

    /** For whom: {@code for} in the file. */
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

    public Worksheet {
        answers = List.copyOf(answers);
        rack = List.copyOf(rack);
        rows = List.copyOf(rows);
        dials = Collections.unmodifiableMap(new LinkedHashMap<>(dials));
        picks = Collections.unmodifiableMap(new LinkedHashMap<>(picks));
    }

    public static Worksheet empty(String title) {
        return new Worksheet(
                title, "", Optional.empty(), List.of(), View.WRITE, List.of(), List.of(), Map.of(), Map.of());
    }

    public Worksheet withRows(List<Row> newRows) {
        return new Worksheet(title, about, audience, answers, view, rack, newRows, dials, picks);
    }

    public Worksheet withDials(Map<String, Double> newDials) {
        return new Worksheet(title, about, audience, answers, view, rack, rows, newDials, picks);
    }

    public Worksheet withDial(String name, double value) {
        Map<String, Double> changed = new LinkedHashMap<>(dials);
        changed.put(name, value);
        return withDials(changed);
    }

    public Worksheet withPick(String name, String path) {
        Map<String, String> changed = new LinkedHashMap<>(picks);
        changed.put(name, path);
        return new Worksheet(title, about, audience, answers, view, rack, rows, dials, changed);
    }
}
