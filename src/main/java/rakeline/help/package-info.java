/** What the declarations say, made readable: an entry for each key, and the words that complete what is being typed. */
package rakeline.help;
