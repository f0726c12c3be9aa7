/** The same work without a window: one class for each command. Data on standard output, messages on standard error. */
package rakeline.command;
