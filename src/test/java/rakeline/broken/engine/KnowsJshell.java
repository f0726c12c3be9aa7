package rakeline.broken.engine;

import jdk.jshell.JShell;
import rakeline.broken.engine.jshell.Worker;

/** Part of the house in which every rule is broken. */
public record KnowsJshell(Worker worker, JShell shell) {}
