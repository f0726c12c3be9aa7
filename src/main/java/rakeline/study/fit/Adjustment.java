package rakeline.study.fit;

import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/**
 * How far a part of several bikes can still be moved one way.
 *
 * @param part as in {@code Rails}
 * @param direction as in {@code forward}
 * @param quantity in which it is moved
 * @param left of each bike; negative beyond the end, by how far; NaN where it is not known
 * @param steps how many stock parts there are in that direction; NaN where the part is moved, not exchanged
 * @param source what ends it
 */
public record Adjustment(String part, String direction, Quantity quantity, Numbers left, Numbers steps, String source) {
    /** Stock stems, common practice: 60 to 140 by 10, and 35 to 60 exist. */
    private static final List<Double> STEM_LENGTHS =
            List.of(35.0, 40.0, 45.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0, 110.0, 120.0, 130.0, 140.0);

    /** Stock stems, common practice: turned over as well. */
    private static final List<Double> STEM_ANGLES =
            List.of(0.0, 5.0, 6.0, 7.0, 8.0, 10.0, 12.0, 17.0, 20.0, 25.0, 30.0, 35.0);

    private static final String TRADE = "stock stems, common practice";
    private static final String RAILS = "the rails' end";

    /** Spacers, stem, rails and post, each way; those alone that at least one of the bikes has. */
    public static List<Adjustment> of(List<Ride> rides, Optional<Stock> stock) {
        Moved moved = new Moved(rides);
        Exchanged exchanged = new Exchanged(rides, stock);
        return Stream.of(moved.spacers(), exchanged.stem(), moved.rails(), moved.post())
                .flatMap(List::stream)
                .filter(one -> one.left().stream().anyMatch(Double::isFinite))
                .toList();
    }

    /** What slides or is stacked. */
    private record Moved(List<Ride> rides) {
        List<Adjustment> spacers() {
            return List.of(
                    row(
                            "Spacers",
                            "up",
                            Inputs.SPACERS,
                            geometry -> least(geometry, Measures.SPACERS_LEFT, Measures.STEERER_LEFT),
                            "the fork maker's limit and the steerer's end, whichever is nearer"),
                    row(
                            "Spacers",
                            "down",
                            Inputs.SPACERS,
                            geometry -> geometry.bike().get(Inputs.SPACERS),
                            "the stem stands on the headset cover"));
        }

        List<Adjustment> rails() {
            return List.of(
                    row("Rails", "forward", Inputs.RAIL_TRAVEL, geometry -> half(geometry) - shift(geometry), RAILS),
                    row("Rails", "back", Inputs.RAIL_TRAVEL, geometry -> half(geometry) + shift(geometry), RAILS));
        }

        List<Adjustment> post() {
            return List.of(
                    row(
                            "Post",
                            "up",
                            Inputs.POST_LENGTH,
                            geometry ->
                                    Measures.POST_INSERTION_LEFT.read(geometry).orNaN(),
                            "the post's mark or the frame maker's minimum, whichever is more"),
                    row(
                            "Post",
                            "down",
                            Inputs.POST_LENGTH,
                            geometry -> least(geometry, Measures.POST_EXTENSION, Measures.POST_DEPTH_LEFT),
                            "the clamp meets the tube, or the post the end of its depth, whichever is nearer"));
        }

        private Adjustment row(
                String part, String direction, Input input, ToDoubleFunction<Geometry> left, String source) {
            Numbers each = Numbers.generate(
                    rides.size(), i -> left.applyAsDouble(rides.get(i).geometry()));
            return new Adjustment(part, direction, input.quantity(), each, each.map(any -> Double.NaN), source);
        }

        private static double half(Geometry geometry) {
            return geometry.bike().get(Inputs.RAIL_TRAVEL) / 2;
        }

        private static double shift(Geometry geometry) {
            return Measures.RAIL_SHIFT.read(geometry).orNaN();
        }

        private static double least(Geometry geometry, Measure<Geometry> one, Measure<Geometry> other) {
            return DoubleStream.of(
                            one.read(geometry).orNaN(), other.read(geometry).orNaN())
                    .filter(Double::isFinite)
                    .min()
                    .orElse(Double.NaN);
        }
    }

    /** What is changed for another stock part. */
    private record Exchanged(List<Ride> rides, Optional<Stock> stock) {
        List<Adjustment> stem() {
            List<Double> angles = STEM_ANGLES.stream()
                    .flatMap(angle -> Stream.of(angle, 0 - angle))
                    .toList();
            return List.of(
                    row("longer", Inputs.STEM_LENGTH, STEM_LENGTHS, 1),
                    row("shorter", Inputs.STEM_LENGTH, STEM_LENGTHS, -1),
                    row("steeper", Inputs.STEM_ANGLE, angles, 1),
                    row("flatter", Inputs.STEM_ANGLE, angles, -1));
        }

        private Adjustment row(String direction, Input input, List<Double> usual, int way) {
            List<Double> offered = offered(input, usual);
            return new Adjustment(
                    "Stem",
                    direction,
                    input.quantity(),
                    Numbers.generate(
                            rides.size(), i -> left(offered, rides.get(i).bike(), input, way)),
                    Numbers.generate(
                            rides.size(), i -> steps(offered, rides.get(i).bike(), input, way)),
                    stock.filter(parts -> parts.has(Category.STEMS))
                            .map(parts -> "the stems of \"" + parts.name() + "\"")
                            .orElse(TRADE));
        }

        private List<Double> offered(Input input, List<Double> usual) {
            return stock.filter(parts -> parts.has(Category.STEMS))
                    .map(parts -> parts.choices(Category.STEMS).stream()
                            .map(part -> part.get(input, Double.NaN))
                            .distinct()
                            .toList())
                    .orElse(usual);
        }

        /** To the furthest that is offered; 0 where there is none further. */
        private static double left(List<Double> offered, Bike bike, Input input, int way) {
            double now = bike.get(input);
            return Double.isNaN(now)
                    ? Double.NaN
                    : further(offered, now, way)
                            .map(value -> way * (value - now))
                            .max()
                            .orElse(0);
        }

        private static double steps(List<Double> offered, Bike bike, Input input, int way) {
            double now = bike.get(input);
            return Double.isNaN(now)
                    ? Double.NaN
                    : further(offered, now, way).distinct().count();
        }

        private static DoubleStream further(List<Double> offered, double now, int way) {
            DoublePredicate further = value -> way * (value - now) > 0;
            return offered.stream().mapToDouble(value -> value).filter(further);
        }
    }
}
