package rakeline.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.geometry.Bike;
import rakeline.geometry.Hands;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.rider.Rider;

/** What a command is about: a bike, as its options change it. */
final class Subject {
    @Parameters(paramLabel = "BIKE", description = "A bike file (*.bike.json).")
    private String bike;

    @Option(names = "--set", paramLabel = "KEY=VALUE", description = "Redraws the bike with a number changed.")
    private List<String> changes = List.of();

    @Option(names = "--hands", paramLabel = "WHERE", description = "tops, hoods (as usual) or drops.")
    private String hands = "hoods";

    @Option(names = "--rider", paramLabel = "FILE", description = "A rider file (*.rider.json): who is on the bike.")
    private String rider;

    /**
     * Reads it. With a rider, the rider's shoe and contact points win; one notice says where the bike had its own.
     *
     * @throws rakeline.quantity.Refusal for a file or an option that is not accepted
     */
    Ride ride(Console console) {
        Ride ride = ride();
        notices().forEach(console::message);
        return ride;
    }

    /** Reads it and says nothing. What is set wins over file and rider alike. */
    Ride ride() {
        Ride ride = Ride.of(Paths.bike(bike), who(), Hands.of(hands));
        return ride.on(ride.bike().redraw(changes()));
    }

    /** The bicycle as its own file and the options have it, without the rider. */
    Bike redrawn() {
        return Paths.bike(bike).redraw(changes());
    }

    private Map<Input, Double> changes() {
        return Setting.changes(KeyValue.numbers("--set", changes));
    }

    /** The rider's file, as it was named. */
    Optional<String> riderFile() {
        return Optional.ofNullable(rider);
    }

    /** One sentence where both files give a shoe or contact points. */
    List<String> notices() {
        return who().map(rider -> rider.groupsWonFrom(redrawn())).filter(groups -> !groups.isEmpty()).stream()
                .map(groups -> rider + " gives " + String.join(" and ", groups) + ", which stands in place of that of "
                        + bike + ".")
                .toList();
    }

    private Optional<Rider> who() {
        return riderFile().map(Paths::rider);
    }
}
