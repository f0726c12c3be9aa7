/**
 * What a page or a study produced, laid out for others: one XHTML text that is also HTML5, and the PDF made from it.
 * Nothing is fetched and nothing runs; whatever came out of files and rows is text.
 */
package rakeline.handout;
