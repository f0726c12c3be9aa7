package rakeline.quantity;

/** A line worth drawing beside a measure: a published or customary limit, never a verdict. */
public record Limit(double value, String label, String source) {}
