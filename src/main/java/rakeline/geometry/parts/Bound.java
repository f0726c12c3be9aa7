package rakeline.geometry.parts;

import rakeline.quantity.Limit;

/**
 * A limit that somebody set for a measure.
 *
 * @param key of the measure
 */
public record Bound(String key, Limit limit) {}
