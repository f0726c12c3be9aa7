package rakeline.catalogue.chart;

import rakeline.json.Quote;

/**
 * A cell where it stands in the file.
 *
 * @param row from 1
 * @param column from 1
 */
record Cell(int row, int column, String text) {
    boolean isBlank() {
        return text.isBlank();
    }

    String place() {
        return "row " + row + ", column " + column;
    }

    /** As it can stand in a sentence. */
    String quoted() {
        return "\"" + Quote.of(text.strip()) + "\"";
    }
}
