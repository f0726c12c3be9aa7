package rakeline.broken.figure;

/** Part of the house in which every rule is broken. */
public record Chart() {}
