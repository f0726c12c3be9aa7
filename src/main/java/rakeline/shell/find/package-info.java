/** Finding words on the page, and putting others in their place. */
package rakeline.shell.find;
