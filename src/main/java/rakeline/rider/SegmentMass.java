package rakeline.rider;

/**
 * One segment's share of a body, one side of a limb.
 *
 * @param mass fraction of body mass
 * @param centre from the segment's first joint, fraction of its length
 * @param across radius of gyration about an axis square to the segment, through its centre, fraction of its length
 * @param along radius of gyration about the segment itself, fraction of its length
 */
record SegmentMass(Segment segment, double mass, double centre, double across, double along) {
    /** Whether there is only one of it. */
    boolean isMiddle() {
        return segment == Segment.TRUNK || segment == Segment.HEAD;
    }
}
