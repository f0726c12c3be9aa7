package rakeline.shell.rack;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import rakeline.figure.paint.Grip;
import rakeline.geometry.Setting;
import rakeline.quantity.Range;
import rakeline.quantity.Refusal;
import rakeline.shell.figures.Handles;

/** The typed numbers of the rack's bikes, moved by a hand on the drawing of them; each drag is one step. */
final class RackHandles implements Handles {
    private final RackDesk desk;
    private final Supplier<List<String>> drawn;

    /** @param drawn the ids of the bikes that the drawing shows, in its order */
    RackHandles(RackDesk desk, Supplier<List<String>> drawn) {
        this.desk = desk;
        this.drawn = drawn;
    }

    private Optional<RackRow> row(Grip grip) {
        return grip.overlay() < drawn.get().size()
                ? desk.model().row(drawn.get().get(grip.overlay()))
                : Optional.empty();
    }

    @Override
    public Optional<Bound> bound(Grip grip) {
        return Setting.keys().contains(grip.key())
                ? row(grip).flatMap(row -> bound(row, RackColumn.of(grip.key())))
                : Optional.empty();
    }

    private static Optional<Bound> bound(RackRow row, RackColumn column) {
        double value = row.value(column);
        return Double.isNaN(value)
                ? Optional.empty()
                : Optional.of(new Bound(
                        column.quantity().label() + " of " + row.name(),
                        value,
                        Math.pow(10, -column.quantity().decimals()),
                        column.quantity().formatWithUnit(value)));
    }

    @Override
    public String whyNot(Grip grip) {
        return Setting.keys().contains(grip.key())
                ? "It cannot be dragged: it is not as the table has it, since contact points or parts were put on the bike."
                : "It cannot be dragged: " + grip.key() + " follows from other numbers.";
    }

    @Override
    public void move(Grip grip, double value) {
        row(grip).ifPresent(row -> {
            RackColumn column = RackColumn.of(grip.key());
            Range range = column.quantity().accepted();
            double within = Math.max(range.from(), Math.min(range.to(), value));
            type(row, column, within);
        });
    }

    private void type(RackRow row, RackColumn column, double value) {
        String text = BigDecimal.valueOf(value)
                .setScale(column.quantity().decimals(), RoundingMode.HALF_EVEN)
                .toPlainString();
        try {
            desk.type(row.id(), column, column.isLength() ? text + " mm" : text);
        } catch (Refusal refusal) {
            desk.say(refusal.getMessage());
        }
    }

    @Override
    public void rest() {
        desk.leave();
    }
}
