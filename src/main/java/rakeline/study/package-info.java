/**
 * Questions asked of the geometry: the one vocabulary of inputs and measures, and the studies that vary them.
 */
package rakeline.study;
