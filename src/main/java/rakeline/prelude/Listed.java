package rakeline.prelude;

import rakeline.geometry.Bike;

/** A bike with the path by which files name it. */
public record Listed(String path, Bike bike) {}
