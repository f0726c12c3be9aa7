/** Help that needs no network: what every quantity and every word means, and how the window works. */
package rakeline.shell.guide;
