/** One figure for a class: as large as the screen, with the drawing beside it and the dials beneath; no code. */
package rakeline.shell.show;
