package rakeline.benchmark;

import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Roots;
import rakeline.geometry.Bike;

/** The bundled bikes that are measured. */
final class DemoBikes {
    private DemoBikes() {}

    /** The bike of a file's name, as {@code road-m}. */
    static Bike read(String name) {
        String file = "demo-data/bikes/" + name + ".bike.json";
        return BikeFile.read(Roots.bundled().read(file, BikeFile.SIZE_LIMIT), file);
    }
}
