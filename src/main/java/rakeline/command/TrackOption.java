package rakeline.command;

import java.util.List;
import picocli.CommandLine.Option;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.study.Vocabulary;

/** What a command follows. */
final class TrackOption {
    @Option(
            names = "--track",
            split = ",",
            paramLabel = "KEY",
            description = "Measures, or inputs, to follow; without, all that the bike has, or the usual ones.")
    private List<String> track = List.of();

    boolean isGiven() {
        return !track.isEmpty();
    }

    /**
     * What is asked for; without, every measure that a ride has the inputs for.
     *
     * @throws rakeline.quantity.Refusal for an unknown key, naming the nearest
     */
    List<Measure<Ride>> of(Vocabulary vocabulary, Ride ride) {
        return vocabulary.chosen(keys(), ride);
    }

    /** What is asked for. */
    List<Measure<Ride>> given(Vocabulary vocabulary) {
        return keys().stream().map(vocabulary::tracked).toList();
    }

    private List<String> keys() {
        return track.stream().map(String::trim).toList();
    }
}
