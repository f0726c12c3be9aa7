package rakeline.broken.engine.jshell;

import jdk.jshell.JShell;

/** Part of the house in which every rule is broken. */
public record Worker(JShell shell) {}
