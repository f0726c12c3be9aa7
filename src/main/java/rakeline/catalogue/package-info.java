/** Reads, checks and writes the files of bicycles and parts, and knows where such files are found. */
package rakeline.catalogue;
