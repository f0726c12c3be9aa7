package rakeline.broken.geometry.toe;

import rakeline.broken.geometry.Bicycle;

/** Part of the house in which every rule is broken. */
public record Toe(Bicycle bicycle) {}
