package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.figure.StudyTables;
import rakeline.study.Seek;
import rakeline.study.Sought;
import rakeline.study.Vocabulary;

/** Looks for every value of one input at which a measure hits a target. */
@Command(
        name = "seek",
        description = "Finds every value of one input, within a range, at which a measure hits a target.",
        footer = {
            "",
            "The range is looked at in 401 places, and closer where the measure crosses the target, turns towards it",
            "or ends. Wheels, fork.axleToCrownMm and fork.sagMm are refitted, anything else is redrawn.",
            "--json prints {\"solutions\": [number...], \"nearest\": null or {\"at\", \"value\"}, \"stretches\": [[from, to]...],",
            "\"touching\": [number...], \"bike\", \"vary\", \"as\", \"target\": {\"key\", \"value\"}, \"held\": null or {\"key\", \"value\", \"by\"}}; nearest",
            "where there is no solution; stretches where every value between two solutions is one; touching those",
            "solutions at which the measure turns and does not cross the target."
        })
final class SeekCommand extends Work {
    @Mixin
    private Subject subject = new Subject();

    @Option(
            names = "--vary",
            required = true,
            paramLabel = "KEY=FROM:TO",
            description = "The input, both ends included.")
    private String vary;

    @Option(names = "--target", required = true, paramLabel = "MEASURE=VALUE", description = "What is to be hit.")
    private String target;

    @Mixin
    private HoldOption hold = new HoldOption();

    @Mixin
    private AsOption as = new AsOption();

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    SeekCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Sought sought = new Seek(
                        subject.ride(this::notice),
                        Vary.of(vary, Vary.RANGE).span(as),
                        Wanted.of("--target", target).target(vocabulary),
                        hold.hold(vocabulary))
                .run();
        output.give(console(), StudyTables.of(sought), () -> asJson(sought));
        return DONE;
    }

    private static Map<String, Object> asJson(Sought sought) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("solutions", sought.values().stream().boxed().toList());
        json.put("nearest", sought.nearest().map(SeekCommand::asJson).orElse(null));
        json.put(
                "stretches",
                sought.stretches().stream()
                        .map(stretch -> List.of(stretch.from(), stretch.to()))
                        .toList());
        json.put("touching", sought.touching());
        json.put("bike", sought.seek().start().bike().name());
        json.put("vary", sought.seek().over().key());
        json.put("as", sought.seek().over().varied().mode().word());
        json.put("target", FigureJson.target(sought.seek().target()));
        json.put("held", sought.seek().hold().map(FigureJson::hold).orElse(null));
        return json;
    }

    private static Map<String, Object> asJson(Sought.Nearest nearest) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("at", nearest.at());
        json.put("value", nearest.value());
        return json;
    }
}
