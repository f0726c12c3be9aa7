package rakeline.broken.command;

import rakeline.broken.shell.Window;

/** Part of the house in which every rule is broken. */
public record KnowsShell(Window window) {}
