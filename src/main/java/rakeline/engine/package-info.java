/**
 * What running a worksheet means: a page's source goes in, immutable outcomes come out. The states, the dials and
 * pickers that rows declare, the results and their one codec live here; {@code engine.jshell} is the implementation.
 */
package rakeline.engine;
