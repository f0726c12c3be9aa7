package rakeline.handling;

/**
 * A stretch of speeds at which every motion of the linear bicycle dies out, hands off.
 *
 * @param toMps infinite where it does not end
 */
public record SelfStable(double fromMps, double toMps) {}
