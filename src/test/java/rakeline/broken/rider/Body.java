package rakeline.broken.rider;

/** Part of the house in which every rule is broken. */
public record Body() {}
