/**
 * What an input or a measure <em>is</em>: key, label, symbol, unit, accepted range, number of decimals, uncertainty,
 * definition, caution, limits and source, said once in one record and read by files, refusals, commands, constants,
 * completion, axis labels, table headings and help alike.
 *
 * <p>Lengths are millimetres and angles degrees wherever a public name says {@code Mm} or {@code Deg}. Every key ends
 * in its unit.
 */
package rakeline.quantity;
