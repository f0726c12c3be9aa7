package rakeline.broken.figure.paint;

import java.awt.Color;

/** Part of the house in which every rule is broken. */
public record Painter(Color color) {}
