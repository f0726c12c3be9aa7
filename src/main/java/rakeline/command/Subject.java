package rakeline.command;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.geometry.Hands;
import rakeline.handling.Ride;

/** What a command is about: a bike, as its options change it. */
final class Subject {
    @Parameters(paramLabel = "BIKE", description = "A bike file (*.bike.json).")
    private String bike;

    @ArgGroup(exclusive = false)
    private Riding riding = new Riding();

    @Option(names = "--hands", paramLabel = "WHERE", description = "tops, hoods (default) or drops.")
    private String hands = "hoods";

    /**
     * Reads it, and says where the rider's shoe or contact points stand in place of the bike's.
     *
     * @param notice takes the sentence
     * @throws rakeline.quantity.Refusal for a file or an option that is not accepted
     */
    Ride ride(Consumer<String> notice) {
        return riding.ride(notice, bike, Hands.of(hands));
    }

    /** Reads it and says nothing. */
    Ride ride() {
        return riding.ride(bike, Hands.of(hands));
    }

    /** Who rides it, and what is set. */
    Riding riding() {
        return riding;
    }

    /** The rider's file, as it was named. */
    Optional<String> riderFile() {
        return riding.riderFile();
    }

    /** One sentence where both files give a shoe or contact points. */
    List<String> notices() {
        return riding.notices(bike);
    }
}
