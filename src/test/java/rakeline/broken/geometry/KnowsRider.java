package rakeline.broken.geometry;

import rakeline.broken.geometry.toe.Toe;
import rakeline.broken.rider.Body;

/** Part of the house in which every rule is broken. */
public record KnowsRider(Body body, Toe toe) {}
