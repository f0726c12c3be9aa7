package rakeline.shell.page;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.worksheet.Row;

/**
 * The bikes that rows are about, by the names that they have on the page. What a row takes from others is a bike, or was
 * made of bikes, or is neither: a number, a rider, a list of parts.
 */
final class About {
    private final List<Outcome> rows;
    private final Map<String, Outcome> named = new HashMap<>();
    private final Set<String> numbers = new HashSet<>();

    About(PageModel page) {
        rows = page.rows().stream().map(Row::id).map(page::standing).toList();
        rows.forEach(row -> {
            named.put(row.name(), row);
            numbers.addAll(row.numbers().keySet());
        });
    }

    /** The rows with a drawing of bikes that a row is about, and of no other, that follow no dial that it does not. */
    List<Outcome> drawnFor(Outcome figure) {
        Set<String> bikes = of(figure);
        return rows.stream()
                .filter(row ->
                        !Beside.drawings(row).isEmpty() && figure.follows().containsAll(row.follows()))
                .filter(row -> figure.takes().contains(row.name()) || shows(row, bikes))
                .toList();
    }

    private boolean shows(Outcome drawing, Set<String> bikes) {
        Set<String> drawn = isBike(drawing) ? Set.of(drawing.name()) : of(drawing);
        return !drawn.isEmpty() && bikes.containsAll(drawn);
    }

    private Set<String> of(Outcome row) {
        Set<String> bikes = new LinkedHashSet<>();
        collect(row, new HashSet<>(), bikes);
        return bikes;
    }

    private void collect(Outcome row, Set<String> seen, Set<String> bikes) {
        for (String name : row.takes()) {
            Outcome giver = named.get(name);
            if (giver == null || isBike(giver)) {
                bikes.add(name);
            } else if (seen.add(name)) {
                collect(giver, seen, bikes);
            }
        }
        bikes.removeAll(numbers);
    }

    private static boolean isBike(Outcome row) {
        return row.result()
                .filter(result -> result instanceof Result.Value value
                        && !value.drawings().isEmpty())
                .isPresent();
    }
}
