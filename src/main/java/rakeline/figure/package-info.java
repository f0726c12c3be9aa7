/**
 * Charts, drawings and tables as plain data: what is shown, not how it is painted. Nothing here knows AWT; a painter
 * in {@code figure.paint} puts the same figure on a screen, into SVG and into PNG.
 */
package rakeline.figure;
