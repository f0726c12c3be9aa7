/**
 * The document: rows, dials, order, undo and the file format. It runs nothing and shows nothing. Values never change;
 * an edit is a function from one worksheet to the next.
 */
package rakeline.worksheet;
