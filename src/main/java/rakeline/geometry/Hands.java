package rakeline.geometry;

import java.util.Locale;
import rakeline.quantity.Refusal;

/** Where the hands are on the bar. */
public enum Hands {
    TOPS,
    HOODS,
    DROPS;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The hands of a word.
     *
     * @throws Refusal for another word than tops, hoods or drops
     */
    public static Hands of(String word) {
        for (Hands hands : values()) {
            if (hands.word().equals(word)) {
                return hands;
            }
        }
        throw new Refusal("hands are " + word + "; accepted is tops, hoods or drops.");
    }
}
