package rakeline.handling;

/**
 * An eigenvalue, 1/s.
 *
 * @param re growth: below 0 the motion dies out
 * @param im angular frequency; 0 where the motion does not oscillate
 */
public record Root(double re, double im) {}
