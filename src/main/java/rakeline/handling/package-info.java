/**
 * Linear dynamics, steady turns and what the hands feel; its measures. Inside this package dynamics use SI units and
 * the axes of Meijaard, Papadopoulos, Ruina and Schwab 2007: origin at the rear contact, x forward, y right, z down.
 * Everything that leaves it is in the frame of reference, the units and the signs of {@code rakeline.geometry}.
 */
package rakeline.handling;
