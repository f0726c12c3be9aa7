package rakeline.geometry;

/** A bicycle, bare or with who rides it: whatever is asked of the one can be asked of the other. */
public interface BikeOrRide {
    /** The bicycle as it stands; under a rider, with the rider's shoe and contact points on it. */
    Bike bike();
}
