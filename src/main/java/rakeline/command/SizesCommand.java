package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.figure.StudyTables;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.study.Crew;
import rakeline.study.SizeRun;
import rakeline.study.Sized;
import rakeline.study.Vocabulary;

/** The head angle and offset that each size of a family needs under a floor. */
@Command(
        name = "sizes",
        description = "The head angle and offset that each size needs for a floor on a measure, side by side.",
        footer = {
            "",
            "A size that clears the floor keeps its head angle; one that does not takes the nearest at which the floor",
            "is just met. --hold trailMm solves for the offset; --hold fork.offsetMm leaves or sets it.",
            "--json prints {\"floor\": {\"key\", \"value\"}, \"held\": {\"key\", \"value\": null for each size's own},",
            "\"sizes\": [{\"bike\", \"keeps\", \"headAngleDeg\", \"offsetMm\", \"reason\", \"asDrawn\": {key: number},",
            "\"measures\": {key: number}}]}; head angle, offset and measures are null where no head angle meets the floor."
        })
final class SizesCommand extends Work {
    @Parameters(arity = "1..*", paramLabel = "BIKE", description = "The bike files of the sizes, in order.")
    private List<String> bikes = List.of();

    @Option(names = "--floor", required = true, paramLabel = "MEASURE=VALUE", description = "The least it may have.")
    private String floor;

    @Option(
            names = "--hold",
            paramLabel = "MEASURE[=VALUE]",
            description = "Held by the offset, or fork.offsetMm itself; each size's own trail without.")
    private String hold = "trailMm";

    @Mixin
    private TrackOption track = new TrackOption();

    @Mixin
    private Riding riding = new Riding();

    @Option(names = "--hands", paramLabel = "WHERE", description = "tops, hoods (default) or drops.")
    private String hands = "hoods";

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    SizesCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Hands where = Hands.of(hands);
        List<Ride> sizes = bikes.stream()
                .map(bike -> riding.ride(this::notice, bike, where))
                .toList();
        List<Measure<Ride>> tracks = track.isGiven() ? track.given(vocabulary) : SizeRun.usualTracks(vocabulary, sizes);
        Sized sized = new SizeRun(sizes, Wanted.of("--floor", floor).target(vocabulary), holding(), tracks)
                .run(Crew.onAllCores(), progress());
        output.give(console(), StudyTables.of(sized), () -> asJson(sized));
        return DONE;
    }

    private SizeRun.Holding holding() {
        Wanted wanted = Wanted.of("--hold", hold);
        return SizeRun.Holding.of(vocabulary, wanted.key(), wanted.valueOrNaN());
    }

    private Map<String, Object> asJson(Sized sized) {
        Wanted wanted = Wanted.of("--hold", hold);
        Map<String, Object> held = new LinkedHashMap<>();
        held.put("key", wanted.key());
        held.put("value", Console.orNull(wanted.valueOrNaN()));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("floor", FigureJson.target(sized.run().floor()));
        json.put("held", held);
        json.put(
                "sizes", sized.sizes().stream().map(size -> asJson(sized, size)).toList());
        return json;
    }

    private static Map<String, Object> asJson(Sized sized, Sized.Size size) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bike", size.asDrawn().bike().name());
        json.put("keeps", size.kept());
        json.put(
                "headAngleDeg",
                size.bike().map(bike -> bike.get(Inputs.HEAD_ANGLE)).orElse(null));
        json.put(
                "offsetMm",
                size.bike().map(bike -> bike.get(Inputs.FORK_OFFSET)).orElse(null));
        json.put("reason", size.reason());
        json.put("asDrawn", numbers(sized, Optional.of(size.asDrawn())));
        json.put("measures", numbers(sized, size.needed()));
        return json;
    }

    private static Map<String, Object> numbers(Sized sized, Optional<Ride> ride) {
        if (ride.isEmpty()) {
            return null;
        }
        Map<String, Object> json = new LinkedHashMap<>();
        Stream.concat(Stream.of(sized.run().floor().measure()), sized.run().tracks().stream())
                .forEach(track -> json.put(
                        track.key(), Console.orNull(track.read(ride.get()).orNaN())));
        return json;
    }
}
