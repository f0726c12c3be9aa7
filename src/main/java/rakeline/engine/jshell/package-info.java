/**
 * The one implementation of {@code engine}, and the only user of {@code jdk.jshell}: snippets are compiled here and run
 * in a worker, a process of its own with our {@link rakeline.engine.jshell.Agent}. One thread owns a session's JShell.
 * Between the two processes travel frames of plain data; nothing is deserialised into objects of a class that the other
 * side names.
 */
package rakeline.engine.jshell;
