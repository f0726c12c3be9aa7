/**
 * Makers' charts read from comma-separated values: headings of keys or of the trade's words, one row or one column a
 * size, millimetres, centimetres or inches. What is not plain is named with its place; nothing is guessed.
 */
package rakeline.catalogue.chart;
