package rakeline.broken.shell;

import javax.swing.JComponent;

/** Part of the house in which every rule is broken. */
public record Window(JComponent component) {}
