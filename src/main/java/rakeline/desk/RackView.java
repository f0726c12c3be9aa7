package rakeline.desk;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How the rack is looked at, and what was typed on it that no bike file can hold yet.
 *
 * @param columns keys of inputs and measures; empty for the usual ones
 * @param lengths the unit of lengths: mm, cm or in
 * @param isOpen whether it stands open beneath a page
 * @param unfinished in the order in which they were begun
 */
public record RackView(List<String> columns, String lengths, boolean isOpen, List<Unfinished> unfinished) {
    /**
     * Numbers of a bike whose groups are not whole.
     *
     * @param file the bike's own; empty for one that has none yet
     * @param name the bike's
     * @param numbers by key
     */
    public record Unfinished(String file, String name, Map<String, Double> numbers) {
        public Unfinished {
            numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
        }
    }

    public RackView {
        columns = List.copyOf(columns);
        unfinished = List.copyOf(unfinished);
    }

    /** The usual columns in millimetres, closed. */
    public static RackView first() {
        return new RackView(List.of(), "mm", false, List.of());
    }

    public RackView withColumns(List<String> keys) {
        return new RackView(keys, lengths, isOpen, unfinished);
    }

    public RackView withLengths(String unit) {
        return new RackView(columns, unit, isOpen, unfinished);
    }

    public RackView opened(boolean open) {
        return new RackView(columns, lengths, open, unfinished);
    }

    public RackView withUnfinished(List<Unfinished> bikes) {
        return new RackView(columns, lengths, isOpen, bikes);
    }
}
