package rakeline.broken.attic;

/** Part of the house in which every rule is broken. */
public record Forgotten() {}
