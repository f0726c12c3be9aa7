package rakeline.broken.catalogue;

import rakeline.broken.figure.Chart;

/** Part of the house in which every rule is broken. */
public record KnowsFigure(Chart chart) {}
