package rakeline.engine;

import java.util.List;
import rakeline.figure.Drawing;
import rakeline.figure.Figure;
import rakeline.quantity.Named;

/** What a row shows. */
public sealed interface Result {
    /** A chart, table or drawing. */
    record Shown(Figure figure) implements Result {}

    /**
     * Anything else, as one piece of text.
     *
     * @param number the value where it is a number, else NaN
     * @param drawings what stands beside the page for it, as for a bike
     */
    record Value(String text, double number, List<Drawing> drawings) implements Result {
        public Value {
            drawings = List.copyOf(drawings);
        }

        /** As people read it under the name that its row gives it: a number with the decimals of its unit. */
        public String said(String name) {
            return Double.isFinite(number) ? new Named(name, number).said() : text;
        }

        /** A value without drawings. */
        public static Value of(String text, double number) {
            return new Value(text, number, List.of());
        }
    }

    /** A string. */
    record Text(String text) implements Result {}
}
