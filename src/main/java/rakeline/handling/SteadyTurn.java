package rakeline.handling;

import rakeline.geometry.SideView;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;

/**
 * A steady turn. Steer and radius are kinematic, the rider in the bicycle's plane: R = v²/(g tan lean) for the rear
 * contact, tan Δ = wheelbase/R. The bar torque is linear, the second line of (g K0 + v² K2) (lean, steer), and so holds for
 * small angles.
 *
 * @param speedMps speed
 * @param leanRad lean into the turn
 * @param radiusM of the rear contact's track
 * @param groundSteerRad between the tracks of front and rear wheel
 * @param steerRad steering angle into the turn
 * @param barTorqueNm about the steering axis, above 0 into the turn
 */
public record SteadyTurn(
        double speedMps, double leanRad, double radiusM, double groundSteerRad, double steerRad, double barTorqueNm) {
    /** Beyond this steering angle the linear torque is flagged, degrees. */
    public static final double LINEAR_TO_DEG = 10;

    /**
     * The turn at a speed and a lean.
     *
     * @param speedKmh above 0
     * @param leanDeg above 0, below 90
     */
    public static SteadyTurn leaning(Ride ride, double speedKmh, double leanDeg) {
        if (!(leanDeg > 0 && leanDeg < 90)) {
            throw new Refusal("the lean is " + Decimals.shortest(leanDeg) + "°; accepted is above 0 and below 90.");
        }
        double speed = speed(speedKmh);
        double lean = Math.toRadians(leanDeg);
        return of(ride, speed, lean, speed * speed / (gravity(ride) * Math.tan(lean)));
    }

    /**
     * The turn at a speed and a radius.
     *
     * @param speedKmh above 0
     * @param radiusM of the rear contact's track, above 0
     */
    public static SteadyTurn around(Ride ride, double speedKmh, double radiusM) {
        if (!(radiusM > 0) || !Double.isFinite(radiusM)) {
            throw new Refusal("the radius is " + Decimals.shortest(radiusM) + " m; accepted is above 0.");
        }
        double speed = speed(speedKmh);
        return of(ride, speed, Math.atan(speed * speed / (gravity(ride) * radiusM)), radiusM);
    }

    private static SteadyTurn of(Ride ride, double speed, double lean, double radius) {
        SideView side = ride.geometry().side();
        double tan = side.wheelbaseMm() / 1000 / radius;
        double steer = Math.atan2(tan * Math.cos(lean), side.sinHead() + tan * Math.sin(lean) * side.cosHead());
        Square stiffness = ride.stability().bicycle().stiffness(speed);
        double torque = stiffness.a21() * lean + stiffness.a22() * steer;
        return new SteadyTurn(speed, lean, radius, Math.atan(tan), steer, torque);
    }

    public double speedKmh() {
        return 3.6 * speedMps;
    }

    public double leanDeg() {
        return Math.toDegrees(leanRad);
    }

    public double groundSteerDeg() {
        return Math.toDegrees(groundSteerRad);
    }

    public double steerDeg() {
        return Math.toDegrees(steerRad);
    }

    /** Whether the steering angle is beyond what the linear torque is taken for. */
    public boolean beyondLinear() {
        return Math.abs(steerDeg()) > LINEAR_TO_DEG;
    }

    /**
     * Force of each hand, square to its lever, N.
     *
     * @param leverMm hand to steering axis
     */
    public double forcePerHandN(double leverMm) {
        return forceOneHandN(leverMm) / 2;
    }

    /** Force of one hand alone, N. */
    public double forceOneHandN(double leverMm) {
        return barTorqueNm / (leverMm / 1000);
    }

    private static double speed(double speedKmh) {
        if (!(speedKmh > 0) || !Double.isFinite(speedKmh)) {
            throw new Refusal("the speed is " + Decimals.shortest(speedKmh) + " km/h; accepted is above 0.");
        }
        return speedKmh / 3.6;
    }

    private static double gravity(Ride ride) {
        return ride.mount().parameters().g();
    }
}
