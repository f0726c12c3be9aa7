/**
 * What lies around the page on the user's machine: where things are kept, files written whole or not at all, changes by
 * others noticed, preferences, recent files, the window's place, the log. It shows nothing.
 */
package rakeline.desk;
