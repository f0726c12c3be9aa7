package rakeline.catalogue;

import rakeline.geometry.Bike;

/** The bundled bike that has every part, for drawings that explain one quantity. */
public final class ExampleBike {
    private static final String PATH = "demo-data/bikes/road-m.bike.json";

    private ExampleBike() {}

    public static Bike read() {
        return BikeFile.read(Roots.bundled().read(PATH, BikeFile.SIZE_LIMIT), PATH);
    }
}
