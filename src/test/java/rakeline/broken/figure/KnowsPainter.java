package rakeline.broken.figure;

import rakeline.broken.figure.paint.Painter;

/** Part of the house in which every rule is broken. */
public record KnowsPainter(Painter painter) {}
