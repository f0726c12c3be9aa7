package rakeline.broken.shell;

import rakeline.broken.command.Run;

/** Part of the house in which every rule is broken. */
public record KnowsCommand(Run run) {}
