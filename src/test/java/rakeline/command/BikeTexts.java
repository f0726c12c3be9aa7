package rakeline.command;

/** Bike files for the commands. */
final class BikeTexts {
    /** The plain bike of the other tests: frame, fork and wheels. */
    static final String PLAIN = """
            {
              "format": "rakeline/bike",
              "version": 1,
              "name": "Small",
              "frame": {
                "stackMm": 515,
                "reachMm": 366,
                "headAngleDeg": 70.5,
                "seatAngleDeg": 74,
                "chainstayMm": 410,
                "bbDropMm": 74
              },
              "fork": {"offsetMm": 47},
              "wheels": {
                "front": {"beadSeatMm": 622, "tyreMm": 28},
                "rear": {"beadSeatMm": 622, "tyreMm": 28}
              }
            }
            """;

    private BikeTexts() {}
}
