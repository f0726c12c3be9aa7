package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.figure.StudyTables;
import rakeline.handling.Ride;
import rakeline.quantity.Numbers;
import rakeline.study.Crew;
import rakeline.study.Doubt;
import rakeline.study.Scatter;
import rakeline.study.Spread;
import rakeline.study.Vocabulary;

/** Carries the uncertainties of a bike's numbers to its measures. */
@Command(
        name = "spread",
        description = "Carries the uncertainties of a bike's numbers to its measures, linearly and by seeded draws.",
        footer = {
            "",
            "What varies: every number given whose standard uncertainty is known, from the file's provenance or else",
            "from its declaration (see keys), and both wheel radii, also where they are nominal.",
            "The linear figure is withheld where it is further than a tenth from that of the draws, as near grazing",
            "contact; where some draws have no value, their share is reported and no uncertainty.",
            "--json prints {measure: {\"value\", \"standardUncertainty\", \"nullShare\", \"linear\", \"parts\": {key: number}}},",
            "parts being what each input alone contributes, signed."
        })
final class SpreadCommand extends Work {
    @Mixin
    private Subject subject = new Subject();

    @Mixin
    private TrackOption track = new TrackOption();

    @Option(names = "--draws", paramLabel = "N", description = "An even number, 100..1000000; 10000 without.")
    private int draws = Spread.USUAL_DRAWS;

    @Option(names = "--seed", paramLabel = "N", description = "The same seed gives the same result; 1 without.")
    private long seed = Spread.USUAL_SEED;

    @Option(names = "--wheels-apart", description = "Each wheel's radius has an error of its own, not a shared one.")
    private boolean wheelsApart;

    @Option(names = "--parts", description = "Shows what each input alone contributes.")
    private boolean parts;

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    SpreadCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Ride ride = subject.ride(this::notice);
        Scatter scatter = new Spread(
                        ride, Doubt.about(ride.bike(), !wheelsApart), track.of(vocabulary, ride), draws, seed)
                .run(Crew.onAllCores(), progress());
        output.give(console(), parts ? StudyTables.parts(scatter) : StudyTables.of(scatter), () -> asJson(scatter));
        return DONE;
    }

    private static Map<String, Object> asJson(Scatter scatter) {
        Map<String, Object> json = new LinkedHashMap<>();
        scatter.rows().forEach(row -> json.put(row.quantity().key(), asJson(scatter, row)));
        return json;
    }

    private static Map<String, Object> asJson(Scatter scatter, Scatter.Row row) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("value", Console.orNull(row.value()));
        json.put("standardUncertainty", Console.orNull(row.standardUncertainty()));
        json.put("nullShare", row.nullShare());
        json.put("linear", Console.orNull(row.linear()));
        json.put("parts", parts(scatter.spread().doubts(), row.parts()));
        return json;
    }

    private static Map<String, Object> parts(List<Doubt> doubts, Numbers parts) {
        Map<String, Object> json = new LinkedHashMap<>();
        for (int i = 0; i < doubts.size(); i++) {
            json.put(doubts.get(i).key(), Console.orNull(parts.at(i)));
        }
        return json;
    }
}
