package rakeline.quantity;

/** What a measure says of one subject: a number, no value here and why, or what it lacks. */
public sealed interface Reading {
    /** A finite number in the measure's unit. */
    record Known(double value) implements Reading {}

    /** Everything is known, and the measure still has no value, as the steering angle of a contact that never comes. */
    record Nowhere(String reason) implements Reading {}

    /** Something that the measure needs is not given: which, in words. */
    record Lacking(String what) implements Reading {
        @Override
        public String reason() {
            return "needs what is not given: " + what;
        }
    }

    static Reading of(double value) {
        return Double.isFinite(value) ? new Known(value) : new Nowhere("has no finite value here");
    }

    static Reading nowhere(String reason) {
        return new Nowhere(reason);
    }

    static Reading lacking(String what) {
        return new Lacking(what);
    }

    /** The number, or NaN. */
    default double orNaN() {
        return this instanceof Known known ? known.value() : Double.NaN;
    }

    /** Why there is no number; empty where there is one. */
    default String reason() {
        return this instanceof Nowhere nowhere ? nowhere.reason() : "";
    }
}
