package rakeline.study.fit;

import rakeline.handling.Ride;

/**
 * A bike in a comparison.
 *
 * @param origin whose numbers it is made of: two contenders of one origin are the same bike, changed, and share the
 *     errors of its numbers
 */
public record Contender(Ride ride, int origin) {}
