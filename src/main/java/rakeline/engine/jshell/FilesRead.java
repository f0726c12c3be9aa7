package rakeline.engine.jshell;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rakeline.engine.Layout;

/** The files that rows have read, as they stood then. */
final class FilesRead {
    private final Map<String, Set<Stamp>> byRow = new HashMap<>();

    void put(String id, Set<Stamp> files) {
        byRow.put(id, files);
    }

    void forget(String id) {
        byRow.remove(id);
    }

    /** Another version of the page. */
    void keep(Layout page) {
        byRow.keySet().removeIf(id -> !page.has(id));
    }

    boolean isEmpty() {
        return byRow.values().stream().allMatch(Set::isEmpty);
    }

    /** Rows that have read a file which stands otherwise by now. */
    Set<String> outdated() {
        return byRow.entrySet().stream()
                .filter(row -> row.getValue().stream().anyMatch(Stamp::isOutdated))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }
}
