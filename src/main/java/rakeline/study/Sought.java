package rakeline.study;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rakeline.geometry.Bike;
import rakeline.quantity.Caution;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/**
 * What a seek found.
 *
 * @param seek as it was asked, the held target settled
 * @param solutions upward; of a stretch its two ends
 * @param stretches where every value is a solution
 * @param nearest where there is no solution; empty also where the measure has no value anywhere in the range
 */
public record Sought(Seek seek, List<Solution> solutions, List<Stretch> stretches, Optional<Nearest> nearest) {
    /**
     * A value of the varied number at which the target is hit, and the bike there.
     *
     * @param touching whether the measure turns at the target, and does not cross it
     */
    public record Solution(double at, Bike bike, boolean touching) {}

    /** Every value between the two is a solution. */
    public record Stretch(double from, double to) {
        boolean has(double value) {
            return value >= from && value <= to;
        }
    }

    /** Where the measure comes nearest to its target, and its value there. */
    public record Nearest(double at, double value) {}

    public Sought {
        solutions = List.copyOf(solutions);
        stretches = List.copyOf(stretches);
    }

    /** The values found, upward. */
    public Numbers values() {
        return Numbers.generate(solutions.size(), i -> solutions.get(i).at());
    }

    /** As in {@code Road XS: trail at 58 mm, head angle 69 to 74°, redrawn}. */
    public String title() {
        return seek.start().bike().name() + ": " + seek.target().words() + ", "
                + seek.over().words() + ", " + Wording.ways(List.of(seek.over().varied()));
    }

    /** What stayed as it was, in words. */
    public String held() {
        return Wording.held(List.of(seek.over().varied()), seek.hold());
    }

    /** What was found, in one sentence or two. */
    public String sentence() {
        if (!stretches.isEmpty()) {
            return "Every value " + stretches.stream().map(this::words).collect(Collectors.joining(", and "))
                    + " is a solution." + beside();
        }
        if (!solutions.isEmpty()) {
            return count(solutions) + touched() + ".";
        }
        Quantity measure = seek.target().measure().quantity();
        return nearest.map(near -> "No solution; the nearest is " + measure.formatWithUnit(near.value()) + " at "
                        + shown(near.at()) + ".")
                .orElse("No solution; " + measure.inSentence() + " has no value anywhere in the range.");
    }

    /** The values at which the measure turns at the target, and does not cross it, upward. */
    public List<Double> touching() {
        return solutions.stream().filter(Solution::touching).map(Solution::at).toList();
    }

    private String words(Stretch stretch) {
        return "from " + shown(stretch.from()) + " to " + shown(stretch.to());
    }

    private String beside() {
        List<Solution> others = solutions.stream()
                .filter(solution -> stretches.stream().noneMatch(stretch -> stretch.has(solution.at())))
                .toList();
        return others.isEmpty()
                ? ""
                : " Beside that there " + (others.size() == 1 ? "is " : "are ") + count(others) + ".";
    }

    private static String count(List<Solution> some) {
        return some.size() + (some.size() == 1 ? " solution" : " solutions");
    }

    private String touched() {
        String where = touching().stream().map(this::shown).collect(Collectors.joining(" and "));
        String measure = Wording.lower(seek.target().measure().quantity().label());
        return where.isEmpty() ? "" : "; at " + where + " " + measure + " turns and only touches the target";
    }

    /** The cautions that belong to what was varied, solved for and aimed at, each once. */
    public List<Caution> cautions() {
        List<Quantity> shown = new java.util.ArrayList<>(List.of(
                seek.target().measure().quantity(), seek.over().setting().quantity()));
        seek.hold().ifPresent(hold -> shown.add(hold.by().quantity()));
        return Quantity.cautionsOf(shown);
    }

    private String shown(double value) {
        return seek.over().setting().quantity().unit().attach(Decimals.shown(Math.rint(value * 1e6) / 1e6));
    }
}
