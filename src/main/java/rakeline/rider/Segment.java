package rakeline.rider;

/** A piece of a body between two joints. */
enum Segment {
    /** Hip to shoulder. */
    TRUNK,
    /** Shoulder to the crown of the head, along the trunk. */
    HEAD,
    /** Shoulder to elbow. */
    UPPER_ARM,
    /** Elbow to wrist; the hand included where a table has no hand. */
    FOREARM,
    /** Wrist to grip. */
    HAND,
    /** Hip to knee. */
    THIGH,
    /** Knee to ankle. */
    SHANK,
    /** Ankle to the ball of the foot. */
    FOOT
}
