package rakeline.engine;

import java.util.List;

/** Something at the top of the page that a row asked for and that a person moves. */
public sealed interface Control {
    /** The variable's name: what files and commands call it. */
    String name();

    String label();

    /**
     * A number with a range.
     *
     * @param key the input that it is bound to, or empty
     * @param unit as written after the number
     * @param initial the value that it has when none is stored
     * @param own the bike's own value, a tick on the scale; NaN for none
     * @param value the value in force
     * @param decimals shown
     */
    record Dial(
            String name,
            String label,
            String key,
            String unit,
            double min,
            double max,
            double step,
            double initial,
            double own,
            double value,
            int decimals)
            implements Control {}

    /**
     * A choice among files.
     *
     * @param paths what can be chosen, as stored in the file
     * @param labels the same, as shown
     * @param chosen one of the paths
     */
    record Picker(String name, String label, List<String> paths, List<String> labels, String chosen)
            implements Control {
        public Picker {
            paths = List.copyOf(paths);
            labels = List.copyOf(labels);
        }
    }
}
