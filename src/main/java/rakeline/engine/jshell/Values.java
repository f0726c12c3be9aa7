package rakeline.engine.jshell;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import rakeline.worksheet.Worksheet;

/** What dials and pickers stand at, as stored in the page or moved since. */
final class Values {
    private final Map<String, Double> dials = new HashMap<>();
    private final Map<String, String> picks = new HashMap<>();

    /** Takes the page's values; returns the names whose value is now another. */
    Set<String> take(Worksheet page) {
        Set<String> moved = differing(dials, page.dials());
        moved.addAll(differing(picks, page.picks()));
        replace(dials, page.dials());
        replace(picks, page.picks());
        return moved;
    }

    /** Moves a dial; false: it stood there already. */
    boolean dial(String name, double value) {
        return !Objects.equals(dials.put(name, value), value);
    }

    /** Chooses in a picker; false: it was chosen already. */
    boolean pick(String name, String path) {
        return !Objects.equals(picks.put(name, path), path);
    }

    /** Tells a worker where the named dials and pickers stand. */
    void tell(Set<String> names, Worker worker) throws Worker.Lost {
        for (String name : names) {
            double value = dials.getOrDefault(name, Double.NaN);
            String path = picks.getOrDefault(name, "");
            worker.tell(Wire.Kind.DIAL, out -> out.text(name).real(value));
            worker.tell(Wire.Kind.PICK, out -> out.text(name).text(path));
        }
    }

    /** The names of all dials and pickers that have a value stored. */
    Set<String> names() {
        Set<String> names = new HashSet<>(dials.keySet());
        names.addAll(picks.keySet());
        return names;
    }

    private static <T> Set<String> differing(Map<String, T> before, Map<String, T> after) {
        Set<String> names = new HashSet<>(before.keySet());
        names.addAll(after.keySet());
        names.removeIf(name -> Objects.equals(before.get(name), after.get(name)));
        return names;
    }

    private static <T> void replace(Map<String, T> before, Map<String, T> after) {
        before.clear();
        before.putAll(after);
    }
}
