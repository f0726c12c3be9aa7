package rakeline.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A page's rows and what they take from each other, told from the source alone. A row uses names of rows above it and
 * of itself, bodies of methods and classes included.
 */
public final class Layout {
    /** A name that a row takes, and the row above that gives it. */
    public record Need(String name, String rowId) {}

    private final List<PageRow> rows;
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<String, List<Integer>> givers = new HashMap<>();
    private final Map<String, Set<PageRow>> declarers = new HashMap<>();
    private final Map<String, Set<String>> reach = new LinkedHashMap<>();
    private final Map<String, List<Need>> needs = new HashMap<>();
    private final Map<String, Set<String>> takers = new HashMap<>();

    private Layout(List<PageRow> rows) {
        this.rows = List.copyOf(rows);
        for (int i = 0; i < rows.size(); i++) {
            places.put(rows.get(i).id(), i);
            for (Definition definition : rows.get(i).source().defines()) {
                givers.computeIfAbsent(definition.use(), any -> new ArrayList<>())
                        .add(i);
                if (definition.kind() != Definition.Kind.IMPORT) {
                    declarers
                            .computeIfAbsent(definition.signature(), any -> new LinkedHashSet<>())
                            .add(rows.get(i));
                }
            }
        }
        rows.forEach(this::connect);
    }

    private void connect(PageRow row) {
        reach.put(row.id(), reachOf(row.source()));
        needs.put(row.id(), needsOf(row));
        needs(row.id())
                .forEach(need -> takers.computeIfAbsent(need.rowId(), any -> new LinkedHashSet<>())
                        .add(row.id()));
    }

    public static Layout of(List<PageRow> rows) {
        return new Layout(rows);
    }

    public List<PageRow> rows() {
        return rows;
    }

    public boolean has(String id) {
        return places.containsKey(id);
    }

    public PageRow row(String id) {
        return rows.get(places.get(id));
    }

    public int place(String id) {
        return places.get(id);
    }

    /** The rows below a row. */
    public Set<String> below(String id) {
        Set<String> below = new LinkedHashSet<>();
        rows.subList(place(id) + 1, rows.size()).forEach(row -> below.add(row.id()));
        return below;
    }

    /** Every name that a row of the page defines. */
    public Set<String> names() {
        return givers.keySet();
    }

    /** The names that the row and the rows above it define. */
    public Set<String> namesFor(String id) {
        int place = places.get(id);
        Set<String> names = new TreeSet<>(givers.keySet());
        names.removeIf(name -> givers.get(name).get(0) > place);
        return names;
    }

    /** The names of this page that running the row may read or change, through methods and classes too. */
    public Set<String> reach(String id) {
        return reach.get(id);
    }

    /** The names that rows above must give before the row can run. */
    public List<Need> needs(String id) {
        return needs.get(id);
    }

    /** The rows below that need a name of this row. */
    public Set<String> takers(String id) {
        return takers.getOrDefault(id, Set.of());
    }

    private List<Need> needsOf(PageRow row) {
        int place = place(row.id());
        List<Need> found = new ArrayList<>();
        for (String name : reach(row.id())) {
            for (int giver : givers.getOrDefault(name, List.of())) {
                if (giver < place) {
                    found.add(new Need(plain(name), rows.get(giver).id()));
                }
            }
        }
        return List.copyOf(found);
    }

    /** The names of the dials and pickers that the row follows: its own, and those of the rows it needs, in page order. */
    public List<String> controlsBehind(String id) {
        Set<String> behind = new HashSet<>();
        collectBehind(id, behind);
        return behind.stream()
                .sorted(Comparator.comparing(places::get))
                .flatMap(each -> row(each).source().snippets().stream())
                .flatMap(snippet -> snippet.control().stream())
                .map(SnippetSource.Declared::name)
                .toList();
    }

    /** The rows that these need, directly or through others, themselves among them; ids of no row of the page left out. */
    public Set<String> behind(Set<String> ids) {
        Set<String> behind = new HashSet<>();
        ids.stream().filter(this::has).forEach(id -> collectBehind(id, behind));
        return behind;
    }

    private void collectBehind(String id, Set<String> behind) {
        if (behind.add(id)) {
            needs(id).forEach(need -> collectBehind(need.rowId(), behind));
        }
    }

    /** Why the row must not run, told from the page's source: one sentence. */
    public Optional<String> refusal(String id) {
        PageRow row = row(id);
        return row.source()
                .fault()
                .map(fault -> "Line " + fault.line() + ", column " + fault.column() + ": " + fault.sentence())
                .or(() -> doubled(row))
                .or(() -> definedBelow(row));
    }

    /** How messages call a row: by what it defines, or by its place. */
    public String called(String id) {
        PageRow row = row(id);
        return RowNames.defined(row.source())
                .map(name -> "row \"" + name + "\"")
                .orElse("row " + row.number());
    }

    private Optional<String> doubled(PageRow row) {
        Set<String> own = new HashSet<>();
        for (Definition definition : row.source().defines()) {
            if (definition.kind() == Definition.Kind.IMPORT) {
                continue;
            }
            if (!own.add(definition.signature())) {
                return Optional.of("This row declares " + definition.signature() + " twice; a name can stand once.");
            }
            Optional<PageRow> other = otherGiver(row, definition);
            if (other.isPresent()) {
                return Optional.of(definition.signature() + " is declared here and also in row "
                        + other.get().number() + "; a name can stand once on a page, so neither runs.");
            }
        }
        return Optional.empty();
    }

    private Optional<PageRow> otherGiver(PageRow row, Definition definition) {
        return declarers.get(definition.signature()).stream()
                .filter(other -> !other.id().equals(row.id()))
                .findFirst();
    }

    private Optional<String> definedBelow(PageRow row) {
        int place = places.get(row.id());
        return row.source().uses().stream()
                .sorted()
                .filter(name ->
                        givers.containsKey(name) && givers.get(name).stream().allMatch(giver -> giver > place))
                .filter(name -> !isImport(name))
                .map(name -> plain(name) + " is declared only below, in row "
                        + rows.get(givers.get(name).get(0)).number() + "; a row uses names of the rows above it.")
                .findFirst();
    }

    private boolean isImport(String name) {
        return givers.get(name).stream()
                .flatMap(giver -> rows.get(giver).source().defines().stream())
                .filter(definition -> definition.use().equals(name))
                .allMatch(definition -> definition.kind() == Definition.Kind.IMPORT);
    }

    private Set<String> reachOf(RowSource source) {
        Set<String> reached = new LinkedHashSet<>();
        source.uses().stream().sorted().forEach(name -> follow(name, reached));
        return reached;
    }

    private void follow(String name, Set<String> reached) {
        if (!givers.containsKey(name) || !reached.add(name)) {
            return;
        }
        for (int giver : givers.get(name)) {
            rows.get(giver).source().snippets().stream()
                    .filter(snippet -> gives(snippet, name) && snippet.isDeferred())
                    .flatMap(snippet -> snippet.uses().stream().sorted())
                    .forEach(used -> follow(used, reached));
        }
    }

    private static boolean gives(SnippetSource snippet, String name) {
        return snippet.defines().stream()
                .anyMatch(definition -> definition.use().equals(name));
    }

    private static String plain(String use) {
        return use.endsWith("()") ? use.substring(0, use.length() - 2) : use;
    }
}
