package rakeline.broken.engine;

/** Part of the house in which every rule is broken. */
public record Session() {}
