/**
 * JSON text as pieces that know their place, or one sentence that says what is wrong and where: what the readers of
 * bike files and of worksheets share.
 */
package rakeline.json;
