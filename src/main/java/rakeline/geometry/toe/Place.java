package rakeline.geometry.toe;

/**
 * A least length and where it is met.
 *
 * @param valueMm the length
 * @param steerDeg steering angle, to the foot's opposite side
 * @param crankDeg crank angle of that foot, 0 straight forward, counted upward, −180..180
 */
public record Place(double valueMm, double steerDeg, double crankDeg) {}
