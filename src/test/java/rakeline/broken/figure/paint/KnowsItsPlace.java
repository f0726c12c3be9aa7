package rakeline.broken.figure.paint;

import rakeline.broken.figure.Chart;
import rakeline.broken.quantity.Length;

/** Part of the house in which every rule is broken. */
public record KnowsItsPlace(Chart chart, Length length) {}
