/**
 * Stock parts: what a shop can put on a bike, each part as the numbers of a bike file that it brings. Lengths are
 * millimetres, angles degrees.
 */
package rakeline.geometry.parts;
