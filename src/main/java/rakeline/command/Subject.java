package rakeline.command;

import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.geometry.Bike;
import rakeline.geometry.Hands;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;

/** What a command is about: a bike, as its options change it. */
final class Subject {
    @Parameters(paramLabel = "BIKE", description = "A bike file (*.bike.json).")
    private String bike;

    @Option(names = "--set", paramLabel = "KEY=VALUE", description = "Redraws the bike with a number changed.")
    private List<String> changes = List.of();

    @Option(names = "--hands", paramLabel = "WHERE", description = "tops, hoods (as usual) or drops.")
    private String hands = "hoods";

    /**
     * Reads it.
     *
     * @throws rakeline.quantity.Refusal for a file or an option that is not accepted
     */
    Ride ride() {
        Bike redrawn = Paths.bike(bike).redraw(Setting.changes(KeyValue.numbers("--set", changes)));
        return Ride.of(redrawn, Hands.of(hands));
    }
}
