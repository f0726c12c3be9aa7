package rakeline.study;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rakeline.geometry.Bike;
import rakeline.quantity.Numbers;
import rakeline.quantity.Reading;

/**
 * A map with a measure held. One walk along y, at the bike's own x, finds where each row begins; the walks along x go
 * on from there, so that of several solutions the one continuous with the start is taken.
 */
final class HeldGrid {
    private final GridMap map;
    private final Hold hold;
    private final Variation variation;

    /** A map whose hold is settled. */
    HeldGrid(GridMap map) {
        this.map = map;
        this.hold = map.hold().orElseThrow();
        this.variation = map.variation().solvingFor(hold.by());
    }

    /** For each x in order, for each y in order. */
    Reading[] readings(Crew crew, Progress progress) {
        List<Optional<Bike>> spine = spine();
        List<List<Reading>> rows = crew.map(spine.size(), row -> row(row, spine.get(row)), progress);
        return IntStream.range(0, map.x().steps().size())
                .boxed()
                .flatMap(column -> rows.stream().map(row -> row.get(column)))
                .toArray(Reading[]::new);
    }

    private List<Optional<Bike>> spine() {
        double here = map.x().varied().setting().valueIn(map.start().bike());
        double x = Double.isNaN(here) ? map.x().steps().at(0) : here;
        return new HeldWalk(along(map.y()), (y, by) -> variation.at(x, y, by), own(), (step, reason) -> {}).bikes();
    }

    private List<Reading> row(int row, Optional<Bike> begin) {
        double y = map.y().steps().at(row);
        double guess = begin.map(hold.by()::valueIn).orElse(own());
        Numbers steps = map.x().steps();
        String[] missed = new String[steps.size()];
        List<Optional<Bike>> bikes = new HeldWalk(
                        along(map.x()),
                        (x, by) -> variation.at(x, y, by),
                        guess,
                        (step, reason) -> missed[step] = reason)
                .bikes();
        return IntStream.range(0, steps.size())
                .mapToObj(step -> bikes.get(step)
                        .map(bike -> map.track().read(map.start().on(bike)))
                        .orElseGet(() -> Reading.nowhere(missed[step])))
                .toList();
    }

    private Sweep along(GridMap.Axis axis) {
        return new Sweep(
                map.start(),
                axis.varied().setting(),
                axis.steps(),
                axis.varied().mode(),
                Optional.of(hold),
                List.of(map.track()));
    }

    private double own() {
        return hold.by().valueIn(map.start().bike());
    }
}
