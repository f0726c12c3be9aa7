package rakeline.broken.study;

/** Part of the house in which every rule is broken. */
public record Sweep() {}
