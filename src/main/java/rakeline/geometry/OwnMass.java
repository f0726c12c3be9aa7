package rakeline.geometry;

import rakeline.quantity.Input;

/**
 * The bicycle's own mass where only its place along the bicycle matters: its four parts as the group masses gives them,
 * or by the defaults that its inputs document.
 *
 * @param massKg of the whole bicycle
 * @param centreXMm ahead of BB
 */
public record OwnMass(double massKg, double centreXMm) {
    /** From specimen B, Moore 2012 (S). */
    private static final double FRAME_ALONG = 0.326 / 1.037;

    private static final double FRAME_HEIGHT = 0.483 / 0.3385;

    /** From memory. */
    private static final double FORK_ALONG = 0.6;

    /** Of a solved bicycle. */
    public static OwnMass of(Geometry geometry) {
        Bike bike = geometry.bike();
        SideView side = geometry.side();
        double front = massKg(bike, MassInputs.FRONT_WHEEL_MASS);
        double rear = massKg(bike, MassInputs.REAR_WHEEL_MASS);
        double fork = massKg(bike, MassInputs.FORK_MASS);
        double frame = massKg(bike, MassInputs.FRAME_MASS);
        double moment = front * side.frontAxleXMm()
                + rear * side.rearAxleXMm()
                + fork * given(bike, MassInputs.FORK_MASS_X, usualFork(geometry).x())
                + frame
                        * given(
                                bike,
                                MassInputs.FRAME_MASS_X,
                                usualFrame(geometry).x());
        double all = front + rear + fork + frame;
        return new OwnMass(all, all == 0 ? 0 : moment / all);
    }

    /** Where fork, stem and bar have their mass where nobody says it. */
    public static Point usualFork(Geometry geometry) {
        SideView side = geometry.side();
        Point barEnd = geometry.cockpit().map(Cockpit::clamp).orElseGet(() -> side.onAxis(0));
        Point axle = side.frontAxle();
        return axle.plus(barEnd.minus(axle).times(FORK_ALONG));
    }

    /** Where all that neither steers nor is a wheel has its mass where nobody says it. */
    public static Point usualFrame(Geometry geometry) {
        SideView side = geometry.side();
        return new Point(
                side.rearAxleXMm() + FRAME_ALONG * side.wheelbaseMm(),
                FRAME_HEIGHT * geometry.bike().get(Inputs.REAR_RADIUS) - side.bbHeightMm());
    }

    private static double massKg(Bike bike, Input input) {
        return given(bike, input, ((Input.Presence.Defaulted) input.presence()).value());
    }

    private static double given(Bike bike, Input input, double otherwise) {
        return bike.given().has(input) ? bike.get(input) : otherwise;
    }
}
