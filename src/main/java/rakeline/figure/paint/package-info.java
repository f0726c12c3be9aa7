/**
 * Painters that put a figure on any {@link java.awt.Graphics2D}, and from there into SVG and PNG. They draw and measure;
 * they hold no widgets and listen to nothing, so the screen, a file and a test use the same ones.
 *
 * <p>Lengths are px at scale 1, y downward; a painter is laid out at scale 1 and enlarged as a whole.
 */
package rakeline.figure.paint;
