package rakeline.study;

import java.util.Locale;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.quantity.Refusal;

/** How a number is changed: as drawn, everything else as printed; or on a frame that stays rigid and turns. */
public enum Mode {
    REDRAW("redrawn"),
    REFIT("refitted");

    private final String participle;

    Mode(String participle) {
        this.participle = participle;
    }

    /** As files and commands say it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As a title says it. */
    public String participle() {
        return participle;
    }

    /** Wheels, fork length and sag are exchanged on a given frame; anything else is drawn anew. */
    public static Mode usualFor(Setting setting) {
        boolean exchanged = setting.isWheel()
                || setting.inputs().contains(Inputs.AXLE_TO_CROWN)
                || setting.inputs().contains(Inputs.FORK_SAG);
        return exchanged ? REFIT : REDRAW;
    }

    /**
     * The mode of a word.
     *
     * @throws Refusal for another word than redraw or refit
     */
    public static Mode of(String word) {
        for (Mode mode : values()) {
            if (mode.word().equals(word)) {
                return mode;
            }
        }
        throw new Refusal("the way of changing a number is " + word + "; accepted is refit or redraw.");
    }
}
