/**
 * A bicycle's dimensions, and the side view, cockpit, seat post and toe clearance solved from them.
 *
 * <p>Frame of reference: the bottom-bracket axis (BB) is the origin; x forward, y up, z to the rider's right. The
 * bicycle stands upright on level ground, steering straight, both tyres touching, unless a definition says otherwise.
 * A steering angle is positive when the bar turns to the left. Crank angle 0 is the right crank pointing straight
 * forward, counted upward. Lengths are millimetres and angles degrees; a name that ends in {@code Rad} is in radians.
 */
package rakeline.geometry;
