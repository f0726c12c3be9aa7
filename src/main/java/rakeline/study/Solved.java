package rakeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rakeline.geometry.Bike;
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/**
 * What a solve found.
 *
 * @param solutions the one continuous with the bike as it is, or where there is none the nearest, first
 * @param nearest where there is no solution: where the sum of the squared misses, each in its own unit, is least;
 *     empty also where the measures have no value anywhere
 */
public record Solved(Solve solve, List<Place> solutions, Optional<Place> nearest) {
    /**
     * Values of the numbers that were looked for.
     *
     * @param values one for each, in the order asked
     * @param missed by how much each target is missed there, measure minus target
     */
    public record Place(Numbers values, Numbers missed, Bike bike) {}

    public Solved {
        solutions = List.copyOf(solutions);
    }

    /** The bike of the first solution; empty where there is none. */
    public Optional<Bike> bike() {
        return solutions.stream().map(Place::bike).findFirst();
    }

    /** As in {@code Road XS: trail at 58 mm and front-centre at 590 mm by head angle and fork offset, redrawn}. */
    public String title() {
        return solve.start().bike().name() + ": "
                + solve.targets().stream().map(Target::words).collect(Collectors.joining(" and ")) + " by "
                + solve.spans().stream()
                        .map(span -> Wording.lower(span.setting().quantity().label()))
                        .collect(Collectors.joining(" and "))
                + ", " + Wording.ways(varied());
    }

    /** What stayed as it was, in words. */
    public String held() {
        return Wording.held(varied(), Optional.empty());
    }

    /** What was found, in one sentence. */
    public String sentence() {
        if (solutions.size() == 1) {
            return "One solution.";
        }
        if (!solutions.isEmpty()) {
            return solutions.size() + " solutions, the one nearest to the bike as it is first.";
        }
        return nearest.map(place -> "No solution; the nearest misses " + misses(place) + ".")
                .orElse("No solution; the measures have no value together anywhere in the ranges.");
    }

    /** The cautions that belong to what was varied and aimed at, each once. */
    public List<Caution> cautions() {
        List<Quantity> shown = new ArrayList<>();
        solve.targets().forEach(target -> shown.add(target.measure().quantity()));
        solve.spans().forEach(span -> shown.add(span.setting().quantity()));
        return Quantity.cautionsOf(shown);
    }

    private String misses(Place place) {
        List<String> each = new ArrayList<>();
        for (int i = 0; i < solve.targets().size(); i++) {
            Quantity quantity = solve.targets().get(i).measure().quantity();
            each.add(Wording.lower(quantity.label()) + " by "
                    + quantity.formatWithUnit(place.missed().at(i)));
        }
        return String.join(" and ", each);
    }

    private List<Varied> varied() {
        return solve.spans().stream().map(Span::varied).toList();
    }
}
