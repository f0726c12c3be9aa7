package rakeline.handout;

import java.util.Arrays;
import java.util.Locale;
import rakeline.quantity.Refusal;

/** Sheets of paper. */
public enum Paper {
    A4(210, 297),
    LETTER(215.9f, 279.4f);

    private final float widthMm;
    private final float heightMm;

    Paper(float widthMm, float heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public float widthMm() {
        return widthMm;
    }

    public float heightMm() {
        return heightMm;
    }

    /** As people write it: {@code A4}, {@code Letter}. */
    @Override
    public String toString() {
        return this == A4 ? "A4" : "Letter";
    }

    /**
     * The paper of a name, case aside.
     *
     * @throws Refusal for another name
     */
    public static Paper of(String name) {
        return Arrays.stream(values())
                .filter(paper -> paper.name().equals(name.toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new Refusal("the paper is " + name + "; accepted are A4 and Letter."));
    }
}
