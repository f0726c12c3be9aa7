package rakeline.engine;

import rakeline.worksheet.Row;

/**
 * A snippet row where it stands on the page.
 *
 * @param number of the row on the page, notes counted, from 1
 */
public record PageRow(int number, Row.Snippet row, RowSource source) {
    public String id() {
        return row.id();
    }
}
