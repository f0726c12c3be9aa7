package rakeline.broken.desk;

import rakeline.broken.engine.Session;

/** Part of the house in which every rule is broken. */
public record KnowsEngine(Session session) {}
