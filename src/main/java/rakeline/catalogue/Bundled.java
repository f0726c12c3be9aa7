package rakeline.catalogue;

import java.util.List;

/** The kinds of demo data that come with the program, and where each lies. */
public enum Bundled {
    BIKES(BikeFile.ENDING, "demo-data/bikes"),
    RIDERS(RiderFile.ENDING, "demo-data/riders"),
    PARTS(PartsFile.ENDING, "demo-data/parts"),
    DYNAMICS(DynamicsFile.ENDING, "demo-data/dynamics");

    private static final String CUSTOMER = "demo-data/customer";

    private final String ending;
    private final String folder;

    Bundled(String ending, String folder) {
        this.ending = ending;
        this.folder = folder;
    }

    /** What the names of their files end in. */
    public String ending() {
        return ending;
    }

    /** Their paths as rows name them: those of their own folder by name, then the customer's. */
    public List<String> paths() {
        return List.of(folder, CUSTOMER).stream()
                .flatMap(each -> Roots.bundledIn(each, ending).stream())
                .toList();
    }
}
