package rakeline.shell.ledger;

import rakeline.shell.look.Look;

/**
 * How the ledger divides its width.
 *
 * @param width of the ledger, in pixels
 * @param share of the text column in what the gutter leaves, 0.2 to 0.8
 * @param wide whether text and figure fit beside each other
 * @param reading whether notes and figures flow without code
 */
record Columns(Look look, int width, double share, boolean wide, boolean reading) {
    private static final int GUTTER = 100;
    private static final int WIDEST_TO_READ = 820;

    static final double LEAST_SHARE = 0.2;
    static final double MOST_SHARE = 0.8;

    int gutter() {
        return look.px(GUTTER);
    }

    /** The stripe at the left edge that marks the selected row. */
    int stripe() {
        return look.px(3);
    }

    int textX() {
        return reading ? readingX() : stripe() + gutter() + gap();
    }

    int gap() {
        return look.space(4);
    }

    /** What gutter and margins leave, in pixels. */
    private int room() {
        return Math.max(look.px(120), width - textX() - gap());
    }

    int textWidth() {
        return reading ? readingWidth() : (int) Math.round((room() - 2 * gap()) * share);
    }

    /** The middle of the border between the columns. */
    int borderX() {
        return textX() + textWidth() + gap();
    }

    int resultX() {
        return borderX() + gap();
    }

    int resultWidth() {
        return reading ? readingWidth() : Math.max(look.px(80), width - resultX() - gap());
    }

    /** The width of a thing that spans both columns. */
    int fullWidth() {
        return reading ? readingWidth() : room();
    }

    /** The width of a text over both columns: no longer lines than the eye follows. */
    int noteWidth() {
        return Math.min(look.px(WIDEST_TO_READ), fullWidth());
    }

    private int readingWidth() {
        return Math.min(look.px(WIDEST_TO_READ), width - 2 * look.space(6));
    }

    private int readingX() {
        return (width - readingWidth()) / 2;
    }

    /** The share that puts the border at an x, kept in bounds. */
    double shareAt(int x) {
        double asked = (x - gap() - textX()) / (double) (room() - 2 * gap());
        return Math.max(LEAST_SHARE, Math.min(MOST_SHARE, asked));
    }
}
