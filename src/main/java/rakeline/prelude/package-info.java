/**
 * The short names that authors type in a row, a facade with no logic of its own, and the {@link
 * rakeline.prelude.Surroundings} that it is given: where files are found, what dials stand at.
 */
package rakeline.prelude;
