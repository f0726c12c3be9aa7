/**
 * Room between toes, pedals and the turned front wheel, and the lean at which a pedal meets the ground.
 *
 * <p>Lengths are millimetres and angles degrees wherever a public name says {@code Mm} or {@code Deg}; radians inside.
 * The bottom-bracket axis is the origin; x points forward, y up, z to the rider's right. Steering is positive to the
 * left, a crank angle of 0 is the right crank pointing straight forward, counted upward. All is worked for the right
 * foot with the wheel turned to the left; the other side is its mirror image.
 *
 * <p>Tyre or guard is a torus, the toe a capsule that lies across the foot. Only the torus' ring and a toe or pedal
 * whose radius is the sum of both are kept: a point of the ring then either touches or does not. While the bar turns,
 * the ring sweeps a surface, and every number here is the least of some function of a point over that surface. The
 * crank is taken out in closed form. What remains, steering angle and place on the ring, is searched by halving patches
 * of the surface, each with a lower bound, so that no minimum is missed however many there are.
 */
package rakeline.geometry.toe;
