/**
 * The document: rows, dials, order, undo and the file format. It runs nothing and shows nothing. Values never change;
 * an edit is a function from one worksheet to the next. Of our own packages it knows only {@code quantity}, for the one
 * kind of refusal and the nearest word.
 */
package rakeline.worksheet;
