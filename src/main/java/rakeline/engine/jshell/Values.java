package rakeline.engine.jshell;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import rakeline.worksheet.Worksheet;

/** What dials and pickers stand at, as stored in the page or moved since, and the page's rack. */
final class Values {
    private final Map<String, Double> dials = new HashMap<>();
    private final Map<String, String> picks = new HashMap<>();
    private List<String> rack = List.of();

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

    /** Takes the page's rack; false: it is the one before. */
    boolean rack(List<String> paths) {
        boolean other = !rack.equals(paths);
        rack = List.copyOf(paths);
        return other;
    }

    void tellRack(Worker worker) throws Worker.Lost {
        worker.tell(Wire.Kind.RACK, out -> out.texts(rack));
    }

    /** Tells a worker that has been told nothing. */
    void tellAll(Worker worker) throws Worker.Lost {
        Set<String> names = new HashSet<>(dials.keySet());
        names.addAll(picks.keySet());
        tell(names, worker);
        tellRack(worker);
    }

    /** Tells a worker where the named dials and pickers stand. */
    void tell(Set<String> names, Worker worker) throws Worker.Lost {
        for (String name : names) {
            double value = dial(name);
            String path = picks.getOrDefault(name, "");
            worker.tell(Wire.Kind.DIAL, out -> out.text(name).real(value));
            worker.tell(Wire.Kind.PICK, out -> out.text(name).text(path));
        }
    }

    /** The value that a dial stands at; NaN where none is stored. */
    double dial(String name) {
        return dials.getOrDefault(name, Double.NaN);
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
