package rakeline.broken.quantity;

import rakeline.broken.geometry.Bicycle;

/** Part of the house in which every rule is broken. */
public record KnowsGeometry(Bicycle bicycle) {}
