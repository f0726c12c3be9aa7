package rakeline.engine.jshell;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import rakeline.engine.Layout;
import rakeline.engine.PageRow;

/** How often each row's names have been taken away: what was compiled against other versions must be compiled again. */
final class Versions {
    private final Map<String, Integer> counts = new HashMap<>();

    /** The names of a row are taken away. */
    void next(String id) {
        counts.merge(id, 1, Integer::sum);
    }

    /** The versions of the rows that a row needs, as they are now. */
    Map<String, Integer> needed(PageRow row, Layout page) {
        return page.needs(row.id()).stream()
                .map(Layout.Need::rowId)
                .distinct()
                .collect(Collectors.toMap(id -> id, this::of));
    }

    /** Whether all rows still are at these versions. */
    boolean stand(Map<String, Integer> needed) {
        return needed.entrySet().stream().allMatch(need -> of(need.getKey()) == need.getValue());
    }

    private int of(String id) {
        return counts.getOrDefault(id, 0);
    }
}
