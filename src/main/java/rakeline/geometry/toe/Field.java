package rakeline.geometry.toe;

/** A length that belongs to each point the tyre's ring can reach, with the crank already where it makes it least. */
interface Field {
    Sample at(Point point);

    /** A lower bound of the field within a distance of a point whose sample is known, mm. */
    double floor(Point point, Sample sample, double distance);

    /** The crank angle that makes the field least at a point, degrees. */
    double crankDeg(Point point);
}
