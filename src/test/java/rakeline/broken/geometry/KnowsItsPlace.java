package rakeline.broken.geometry;

import rakeline.broken.quantity.Length;

/** Part of the house in which every rule is broken. */
public record KnowsItsPlace(Length length) {}
