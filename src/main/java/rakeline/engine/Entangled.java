package rakeline.engine;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Rows that may change each other's values. A name whose value can change ties together all rows that reach it, and the
 * names that one row reaches are tied to each other, since one may lead to the other's object. When one of the tied rows
 * runs again, all of them do, from the first: only so is the value again what a fresh run would make it.
 */
public final class Entangled {
    /** Rows tied to each other, and the names that tie them. */
    private record Group(Set<String> ids, Set<String> names) {
        Group with(Group other) {
            return new Group(union(ids, other.ids), union(names, other.names));
        }

        private static Set<String> union(Set<String> some, Set<String> others) {
            Set<String> union = new HashSet<>(some);
            union.addAll(others);
            return union;
        }
    }

    private final Map<String, Group> groups;

    private Entangled(Map<String, Group> groups) {
        this.groups = groups;
    }

    /**
     * Finds the ties of a page.
     *
     * @param changing whether the value of a variable can change, as far as its last run showed
     */
    public static Entangled of(Layout page, Predicate<String> changing) {
        Set<String> names = changingNames(page, changing);
        Map<String, Group> byName = new HashMap<>();
        Map<String, Group> byRow = new HashMap<>();
        for (PageRow row : page.rows()) {
            Set<String> touched = touched(page, row, names);
            Group group = touched.stream()
                    .map(byName::get)
                    .filter(Objects::nonNull)
                    .distinct()
                    .reduce(new Group(Set.of(row.id()), touched), Group::with);
            group.names().forEach(name -> byName.put(name, group));
            group.ids().forEach(id -> byRow.put(id, group));
        }
        return new Entangled(byRow);
    }

    /** The rows tied to a row, itself among them. */
    public Set<String> with(String id) {
        return groups.get(id).ids();
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

    private static Set<String> touched(Layout page, PageRow row, Set<String> changing) {
        Set<String> touched = new LinkedHashSet<>(page.reach(row.id()));
        row.source().defines().forEach(definition -> touched.add(definition.use()));
        touched.retainAll(changing);
        return touched;
    }
}
