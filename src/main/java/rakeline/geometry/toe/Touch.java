package rakeline.geometry.toe;

/**
 * Where toe and wheel first touch as the bar turns.
 *
 * @param steerDeg steering angle, to the foot's opposite side; 0 where they touch already when steering straight
 * @param crankDeg crank angle of that foot, −180..180
 */
public record Touch(double steerDeg, double crankDeg) {}
