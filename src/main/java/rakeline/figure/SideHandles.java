package rakeline.figure;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rakeline.figure.Drawing.Handle;
import rakeline.figure.Drawing.Mark;
import rakeline.geometry.Bike;
import rakeline.geometry.Cockpit;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.geometry.SeatAxis;
import rakeline.geometry.SideView;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/** Where the inputs of a side view can be taken hold of: each at the place that it moves, when it is redrawn. */
final class SideHandles {
    private static final double STEP = 0.01;
    private static final double NOSE = 120;

    private static final List<Held> HELD = List.of(
            new Held(Inputs.HEAD_ANGLE, geometry -> Optional.of(axisOnTheGround(geometry.side()))),
            new Held(Inputs.FORK_OFFSET, geometry -> Optional.of(geometry.side().frontAxle())),
            new Held(Inputs.CHAINSTAY, geometry -> Optional.of(geometry.side().rearAxle())),
            new Held(Inputs.SEAT_ANGLE, geometry -> Optional.of(seat(geometry.bike()))),
            new Held(Inputs.CRANK_LENGTH, SideHandles::pedal),
            new Held(Inputs.STEM_LENGTH, geometry -> geometry.cockpit().map(Cockpit::clamp)),
            new Held(Inputs.STEM_ANGLE, geometry -> geometry.cockpit().map(SideHandles::middleOfStem)),
            new Held(Inputs.SPACERS, geometry -> geometry.cockpit().map(Cockpit::stemRoot)),
            new Held(Inputs.CONTACT_SIT_X, geometry -> geometry.sitPoint().map(sit -> sit.plus(new Point(NOSE, -6)))),
            new Held(Inputs.CONTACT_SIT_Y, Geometry::sitPoint));

    private SideHandles() {}

    /** An input and the place that it moves. */
    private record Held(Input input, Function<Geometry, Optional<Point>> place) {
        Optional<Point> at(Bike bike) {
            return place.apply(Geometry.of(bike));
        }
    }

    static List<Mark> of(Geometry geometry, int overlay) {
        return HELD.stream()
                .<Mark>flatMap(held -> handle(held, geometry.bike(), overlay).stream())
                .toList();
    }

    private static Optional<Handle> handle(Held held, Bike bike, int overlay) {
        double value = bike.get(held.input());
        try {
            return held.at(bike)
                    .filter(at -> !Double.isNaN(value))
                    .flatMap(at -> held.at(bike.with(held.input(), value + STEP))
                            .flatMap(next -> handle(held.input(), value, at, next, overlay)));
        } catch (Refusal atTheEndOfItsRange) {
            // it cannot be drawn a little larger, so that nothing says which way it goes
            return Optional.empty();
        }
    }

    private static Optional<Handle> handle(Input input, double value, Point at, Point next, int overlay) {
        return Handle.moving(input.quantity(), value, on(at), on(next), STEP, overlay);
    }

    private static Drawing.Point on(Point point) {
        return new Drawing.Point(point.x(), point.y());
    }

    private static Optional<Point> pedal(Geometry geometry) {
        Bike bike = geometry.bike();
        return bike.hasGroup("crank") ? Optional.of(new Point(bike.get(Inputs.CRANK_LENGTH), 0)) : Optional.empty();
    }

    private static Point axisOnTheGround(SideView side) {
        return new Point(side.frontAxleXMm() + side.trailMm(), -side.bbHeightMm());
    }

    /** Where the seat axis reaches the height of the stack. */
    private static Point seat(Bike bike) {
        SeatAxis axis = SeatAxis.of(bike);
        return axis.at(axis.alongAtHeight(bike.get(Inputs.STACK)));
    }

    private static Point middleOfStem(Cockpit cockpit) {
        return new Point(
                (cockpit.stemRoot().x() + cockpit.clamp().x()) / 2,
                (cockpit.stemRoot().y() + cockpit.clamp().y()) / 2);
    }
}
