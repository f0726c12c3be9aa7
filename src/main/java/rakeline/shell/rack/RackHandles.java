package rakeline.shell.rack;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import rakeline.figure.paint.Grip;
import rakeline.geometry.Setting;
import rakeline.shell.figures.Handles;

/** The typed numbers of the rack's bikes, moved by a hand on the drawing of them; each drag is one step. */
final class RackHandles implements Handles {
    private final RackStore store;
    private final Supplier<List<String>> drawn;

    /** @param drawn the ids of the bikes that the drawing shows, in its order */
    RackHandles(RackStore store, Supplier<List<String>> drawn) {
        this.store = store;
        this.drawn = drawn;
    }

    private Optional<RackBike> row(Grip grip) {
        return grip.overlay() < drawn.get().size() ? store.row(drawn.get().get(grip.overlay())) : Optional.empty();
    }

    @Override
    public Optional<Bound> bound(Grip grip) {
        return Setting.keys().contains(grip.key())
                ? row(grip).flatMap(row -> bound(row, RackColumn.of(grip.key())))
                : Optional.empty();
    }

    private static Optional<Bound> bound(RackBike row, RackColumn column) {
        double value = row.value(column);
        return Double.isNaN(value)
                ? Optional.empty()
                : Optional.of(new Bound(
                        column.quantity().label() + " of " + row.name(),
                        value,
                        Math.abs(StockSteps.along(column.quantity(), value, 1) - value),
                        column.quantity().said(value)));
    }

    @Override
    public String whyNot(Grip grip) {
        return Setting.keys().contains(grip.key())
                ? "It cannot be dragged: it is not as the table has it, since contact points or parts were put on the bike."
                : "It cannot be dragged: " + Labels.of(grip.key()) + " follows from other numbers.";
    }

    @Override
    public double along(Grip grip, Bound bound, int steps) {
        return StockSteps.along(RackColumn.of(grip.key()).quantity(), bound.value(), steps);
    }

    /** The number is shown as it would be; it counts once the hand lets go. */
    @Override
    public void move(Grip grip, double value) {
        row(grip).ifPresent(row -> {
            double to = StockSteps.nearest(RackColumn.of(grip.key()).quantity(), value);
            store.tell(new RackEvent.Dragged(row.id(), grip.key(), to));
        });
    }

    @Override
    public void rest() {
        store.tell(new RackEvent.Released());
    }
}
