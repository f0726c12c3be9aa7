package rakeline.broken;

import java.awt.Color;

/** Part of the house in which every rule is broken. */
public record Drawing(Color color) {}
