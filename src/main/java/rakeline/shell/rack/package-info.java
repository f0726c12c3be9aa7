/**
 * The rack: the table of bikes at hand. What it holds and what a cell says are values that know no widget; a bike file is
 * written whole each time a number is settled, so that rows which read it follow and nothing typed waits for a save.
 */
package rakeline.shell.rack;
