package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.geometry.Cautions;
import rakeline.geometry.Inputs;
import rakeline.geometry.ToeMeasures;
import rakeline.handling.HandForce;
import rakeline.handling.Ride;
import rakeline.handling.SteadyTurn;
import rakeline.quantity.Caution;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/** A steady turn: what the bicycle does and what the hands feel. */
public final class TurnTable {
    /** What is said where nobody rides. */
    public static final String NEEDS_A_RIDER =
            "Torque at the bar and force of the hands are left out: they need a rider.";

    private static final Caution MODEL = new Caution(
            "kinematic and linear",
            "Steer and radius are kinematic, rider in the bicycle's plane, tyres without slip; torque and force are"
                    + " linear, for small angles.");

    private TurnTable() {}

    public static Table of(Ride ride, SteadyTurn turn) {
        List<Row> rows = new ArrayList<>(List.of(
                new Row("Steering angle", "°", turn.steerDeg(), 2),
                new Row("Ground steer", "°", turn.groundSteerDeg(), 2),
                new Row("Lean", "°", turn.leanDeg(), 2),
                new Row("Radius of the rear contact", "m", turn.radiusM(), 2)));
        if (ride.isRidden()) {
            rows.add(new Row("Bar torque, above 0 into the turn", "N m", turn.barTorqueNm(), 2));
        }
        HandForce.of(ride, turn).forEach(force -> addHands(rows, force));
        return new Table(
                        ride.bike().name() + ": steady turn at " + Decimals.fixed(turn.speedKmh(), 1) + " km/h; "
                                + MassTable.rider(ride.mount()),
                        List.of(
                                Column.ofWords(
                                        "quantity",
                                        "Quantity",
                                        rows.stream().map(Row::label).toList()),
                                new Column(
                                        "value",
                                        "Value",
                                        "",
                                        Numbers.generate(
                                                rows.size(), i -> rows.get(i).value()),
                                        rows.stream().map(Row::shown).toList()),
                                Column.ofWords(
                                        "unit",
                                        "Unit",
                                        rows.stream().map(Row::unit).toList())),
                        ride.isRidden() ? "" : NEEDS_A_RIDER,
                        cautions(ride, turn))
                .about(Basis.of(List.of(ride), Stream.empty()));
    }

    /** What belongs beside the numbers of a turn, toe contact among them. */
    public static List<Caution> cautions(Ride ride, SteadyTurn turn) {
        List<Caution> cautions = new ArrayList<>(List.of(MODEL));
        if (turn.beyondLinear()) {
            cautions.add(new Caution(
                    "small angles",
                    "The steering angle is beyond " + Decimals.shown(SteadyTurn.LINEAR_TO_DEG)
                            + "°: torque and force are far from small angles."));
        }
        if (ride.isRidden() && ride.mount().restsOnDefaults()) {
            cautions.add(new Caution("default masses", "Torque and force rest on default masses."));
        }
        beyondStrike(ride, turn).ifPresent(cautions::add);
        beyondGrip(turn).ifPresent(cautions::add);
        if (Double.isFinite(ToeMeasures.TOE_CONTACT_STEER.read(ride.geometry()).orNaN())) {
            cautions.add(Cautions.TOE);
        }
        return cautions;
    }

    /** A lean beyond that at which the lowest pedal meets the ground. */
    private static Optional<Caution> beyondStrike(Ride ride, SteadyTurn turn) {
        Quantity quantity = ToeMeasures.PEDAL_STRIKE_LEAN.quantity();
        double strikeDeg = ToeMeasures.PEDAL_STRIKE_LEAN.read(ride.geometry()).orNaN();
        return turn.leanDeg() > strikeDeg
                ? Optional.of(new Caution(
                        Cautions.PEDAL_STRIKE.word(),
                        "The lean of " + quantity.formatWithUnit(turn.leanDeg()) + " is beyond "
                                + quantity.formatWithUnit(strikeDeg)
                                + ", where the lowest pedal meets the ground. " + Cautions.PEDAL_STRIKE.sentence()))
                : Optional.empty();
    }

    /** A lean beyond what the declaration of lean says that a tyre holds. */
    private static Optional<Caution> beyondGrip(SteadyTurn turn) {
        Quantity lean = Inputs.RIDE_LEAN.quantity();
        return lean.limits().stream()
                .filter(limit -> turn.leanDeg() > limit.value())
                .findFirst()
                .map(limit -> new Caution(
                        "grip",
                        "The lean of " + lean.formatWithUnit(turn.leanDeg()) + " is beyond "
                                + lean.formatWithUnit(limit.value()) + ", " + limit.label() + " (" + limit.source()
                                + "): the tyres may slide, and the model has no slip."));
    }

    private static void addHands(List<Row> rows, HandForce force) {
        String where = "at the " + force.hands().word();
        rows.add(new Row("Hand lever " + where, "mm", force.leverMm(), 1));
        if (Double.isFinite(force.perHandN())) {
            rows.add(new Row("Force per hand " + where, "N", force.perHandN(), 2));
            rows.add(new Row("Force of one hand " + where, "N", force.oneHandN(), 2));
        }
    }

    /** A line of the table. */
    private record Row(String label, String unit, double value, int decimals) {
        String shown() {
            return Decimals.fixed(value, decimals);
        }
    }
}
