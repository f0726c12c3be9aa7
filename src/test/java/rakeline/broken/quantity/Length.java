package rakeline.broken.quantity;

/** Part of the house in which every rule is broken. */
public record Length(double mm) {}
