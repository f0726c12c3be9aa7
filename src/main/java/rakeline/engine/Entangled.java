package rakeline.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Rows that may change each other's values. A name whose value can change ties together all rows that reach it, and the
 * names that one row reaches are tied to each other, since one may lead to the other's object. When one of the tied rows
 * runs again, all of them do, from the first: only so is the value again what a fresh run would make it.
 */
public final class Entangled {
    private final Map<String, Set<String>> tiedTo = new HashMap<>();

    private Entangled() {}

    /**
     * Finds the ties of a page.
     *
     * @param changing whether the value of a variable can change, as far as its last run showed
     */
    public static Entangled of(Layout page, Predicate<String> changing) {
        Set<String> names = changingNames(page, changing);
        Entangled ties = new Entangled();
        Map<String, Set<String>> byName = new HashMap<>();
        for (PageRow row : page.rows()) {
            Set<String> group = new LinkedHashSet<>(List.of(row.id()));
            for (String name : touched(page, row, names)) {
                group.addAll(byName.getOrDefault(name, Set.of()));
            }
            touched(page, row, names).forEach(name -> byName.put(name, group));
            byName.replaceAll((name, other) -> group.containsAll(other) ? group : other);
            group.forEach(id -> ties.tiedTo.put(id, group));
        }
        return ties;
    }

    /** The rows tied to a row, itself among them, in page order of their first meeting. */
    public Set<String> with(String id) {
        return tiedTo.get(id);
    }

    private static Set<String> changingNames(Layout page, Predicate<String> changing) {
        Set<String> names = new LinkedHashSet<>();
        for (PageRow row : page.rows()) {
            names.addAll(row.source().assigns());
            for (Definition definition : row.source().defines()) {
                boolean variable = definition.kind() == Definition.Kind.VARIABLE && changing.test(definition.name());
                if (variable || definition.keepsState()) {
                    names.add(definition.use());
                }
            }
        }
        names.retainAll(page.names());
        return names;
    }

    private static List<String> touched(Layout page, PageRow row, Set<String> changing) {
        Set<String> touched = new LinkedHashSet<>(page.reach(row.id()));
        row.source().defines().forEach(definition -> touched.add(definition.use()));
        List<String> kept = new ArrayList<>(touched);
        kept.retainAll(changing);
        return kept;
    }
}
