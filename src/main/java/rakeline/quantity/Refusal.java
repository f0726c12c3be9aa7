package rakeline.quantity;

/**
 * Input that cannot be taken. The message is one plain sentence for the person who gave it: where, which value, and
 * what is accepted.
 */
public final class Refusal extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public Refusal(String sentence) {
        super(sentence);
    }

    public Refusal(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    /** The same refusal with the place put before it, as in {@code small.bike.json: …}. */
    public Refusal in(String place) {
        return new Refusal(place + ": " + getMessage(), this);
    }
}
