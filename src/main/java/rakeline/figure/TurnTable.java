package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rakeline.handling.HandForce;
import rakeline.handling.Ride;
import rakeline.handling.SteadyTurn;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;

/** A steady turn: what the bicycle does and what the hands feel. */
public final class TurnTable {
    private TurnTable() {}

    public static Table of(Ride ride, SteadyTurn turn) {
        List<Row> rows = new ArrayList<>(List.of(
                new Row("Steering angle", "°", turn.steerDeg(), 2),
                new Row("Ground steer", "°", turn.groundSteerDeg(), 2),
                new Row("Lean", "°", turn.leanDeg(), 2),
                new Row("Radius of the rear contact", "m", turn.radiusM(), 2),
                new Row("Bar torque, above 0 into the turn", "N m", turn.barTorqueNm(), 2)));
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
                        "",
                        cautions(ride, turn))
                .about(Basis.of(List.of(ride), Stream.empty()));
    }

    /** What belongs beside the numbers of a turn. */
    public static List<String> cautions(Ride ride, SteadyTurn turn) {
        List<String> cautions = new ArrayList<>();
        cautions.add(
                "Steer and radius are kinematic, rider in the bicycle's plane, tyres without slip; torque and force are"
                        + " linear, for small angles.");
        if (turn.beyondLinear()) {
            cautions.add("The steering angle is beyond " + Decimals.shown(SteadyTurn.LINEAR_TO_DEG)
                    + "°: torque and force are far from small angles.");
        }
        if (ride.mount().restsOnDefaults()) {
            cautions.add("Torque and force rest on default masses.");
        }
        return cautions;
    }

    private static void addHands(List<Row> rows, HandForce force) {
        String where = "at the " + force.hands().word();
        rows.add(new Row("Hand lever " + where, "mm", force.leverMm(), 1));
        rows.add(new Row("Force per hand " + where, "N", force.perHandN(), 2));
        rows.add(new Row("Force of one hand " + where, "N", force.oneHandN(), 2));
    }

    /** A line of the table. */
    private record Row(String label, String unit, double value, int decimals) {
        String shown() {
            return Decimals.fixed(value, decimals);
        }
    }
}
