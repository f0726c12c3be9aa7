package rakeline.broken.figure.paint;

import javax.swing.JComponent;

/** Part of the house in which every rule is broken. */
public record HasAWidget(JComponent component) {}
