package rakeline.prelude;

import rakeline.catalogue.RiderFile;
import rakeline.rider.Rider;

/** What a row may call about riders. */
public final class Riders {
    private Riders() {}

    /** The rider of a file, looked for in the worksheet's folder, your Rakeline folder and among what is bundled. */
    public static Rider rider(String path) {
        return RiderFile.read(Surroundings.current().roots().read(path, RiderFile.SIZE_LIMIT), path);
    }
}
