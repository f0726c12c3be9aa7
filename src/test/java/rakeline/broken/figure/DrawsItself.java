package rakeline.broken.figure;

import java.awt.Color;

/** Part of the house in which every rule is broken. */
public record DrawsItself(Color color) {}
