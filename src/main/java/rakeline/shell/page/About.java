package rakeline.shell.page;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rakeline.engine.Layout.Need;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.worksheet.Row;

/**
 * The bikes that rows are about, by the names that they have on the page. What a row takes from others is a bike, or was
 * made of bikes, or is neither: a number, a rider, a list of parts.
 */
final class About {
    /**
     * A row with a drawing.
     *
     * @param bikes of those that the figure is about, how many it shows
     */
    record Drawn(Outcome row, int bikes) {}

    private final Map<String, Outcome> rows = new LinkedHashMap<>();

    About(PageModel page) {
        page.rows().stream().map(Row::id).forEach(id -> rows.put(id, page.standing(id)));
    }

    /** The rows with a drawing of bikes that a row is about, and of no other, that follow no dial that it does not. */
    List<Drawn> drawnFor(Outcome figure) {
        Set<Need> bikes = of(figure);
        return rows.values().stream()
                .filter(row ->
                        !Beside.drawings(row).isEmpty() && figure.follows().containsAll(row.follows()))
                .flatMap(row -> shown(row, bikes).stream())
                .toList();
    }

    private Optional<Drawn> shown(Outcome row, Set<Need> bikes) {
        Set<Need> drawn = isBike(row) ? Set.of(new Need(row.name(), row.id())) : drawnBy(row, bikes);
        return drawn.isEmpty() || !bikes.containsAll(drawn)
                ? Optional.empty()
                : Optional.of(new Drawn(row, drawn.size()));
    }

    /** The bikes that the row gives itself, where the figure takes any of them; else those that it takes from others. */
    private Set<Need> drawnBy(Outcome row, Set<Need> bikes) {
        Set<Need> own =
                bikes.stream().filter(bike -> bike.rowId().equals(row.id())).collect(Collectors.toSet());
        return own.isEmpty() ? of(row) : own;
    }

    private Set<Need> of(Outcome row) {
        Set<Need> bikes = new LinkedHashSet<>();
        collect(row, new HashSet<>(), bikes);
        return bikes;
    }

    private void collect(Outcome row, Set<Need> seen, Set<Need> bikes) {
        for (Need taken : row.takes()) {
            Outcome giver = rows.get(taken.rowId());
            if (isMade(taken, giver)) {
                if (seen.add(taken)) {
                    collect(giver, seen, bikes);
                }
            } else if (!giver.numbers().containsKey(taken.name())) {
                bikes.add(taken);
            }
        }
    }

    /** Whether it is what the row came to, and no bike: a study, a rider, a list, something made of what the row takes. */
    private static boolean isMade(Need taken, Outcome giver) {
        return giver.name().equals(taken.name())
                && !isBike(giver)
                && !giver.numbers().containsKey(taken.name());
    }

    private static boolean isBike(Outcome row) {
        return row.result()
                .filter(result -> result instanceof Result.Value value
                        && !value.drawings().isEmpty())
                .isPresent();
    }
}
