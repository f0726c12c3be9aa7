package rakeline.engine;

import rakeline.figure.Figure;

/** What a row shows. */
public sealed interface Result {
    /** A chart, table or drawing. */
    record Shown(Figure figure) implements Result {}

    /**
     * Anything else, as one piece of text.
     *
     * @param number the value where it is a number, else NaN
     */
    record Value(String text, double number) implements Result {}

    /** A string. */
    record Text(String text) implements Result {}
}
