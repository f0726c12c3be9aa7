/**
 * A body, its contact points and its posture on a solved bicycle; its measures. Frame, units and signs are those of
 * {@code rakeline.geometry}; masses are kilograms, moments of inertia kg m².
 */
package rakeline.rider;
