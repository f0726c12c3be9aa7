package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.figure.StudyTables;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Numbers;
import rakeline.study.Crew;
import rakeline.study.Doubt;
import rakeline.study.Sensitivities;
import rakeline.study.Sensitivity;
import rakeline.study.Varied;
import rakeline.study.Vocabulary;

/** How much each measure changes per unit of each input. */
@Command(
        name = "sensitivity",
        description = "How much each measure changes per unit of each input, at the bike as it is.",
        footer = {
            "",
            "Wheels, fork.axleToCrownMm and fork.sagMm are refitted to the rigid frame, anything else is redrawn.",
            "--json prints {measure: {input: number or null}, \"errors\": {measure: {input: number or null}}}; an error is",
            "an estimate of what the figure is good to, in its own unit."
        })
final class SensitivityCommand extends Work {
    @Mixin
    private Subject subject = new Subject();

    @Option(
            names = "--vary",
            split = ",",
            paramLabel = "KEY",
            description = "Inputs; without, those whose uncertainty is known.")
    private List<String> vary = List.of();

    @Mixin
    private TrackOption track = new TrackOption();

    @Mixin
    private AsOption as = new AsOption();

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    SensitivityCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Ride ride = subject.ride(this::notice);
        List<Varied> inputs =
                keys(ride).stream().map(Setting::of).map(as::varied).toList();
        Sensitivities found =
                new Sensitivity(ride, inputs, track.of(vocabulary, ride)).run(Crew.onAllCores(), progress());
        output.give(console(), StudyTables.of(found), () -> asJson(found));
        return DONE;
    }

    private List<String> keys(Ride ride) {
        return vary.isEmpty()
                ? Doubt.about(ride.bike(), true).stream().map(Doubt::key).toList()
                : vary.stream().map(String::trim).toList();
    }

    private static Map<String, Object> asJson(Sensitivities found) {
        Map<String, Object> json = rows(found, found.columns());
        json.put("errors", rows(found, found.errors()));
        return json;
    }

    private static Map<String, Object> rows(Sensitivities found, List<Numbers> columns) {
        Map<String, Object> json = new LinkedHashMap<>();
        for (int i = 0; i < found.sensitivity().tracks().size(); i++) {
            json.put(found.sensitivity().tracks().get(i).key(), row(found, columns, i));
        }
        return json;
    }

    private static Map<String, Object> row(Sensitivities found, List<Numbers> columns, int track) {
        Map<String, Object> json = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            json.put(
                    found.sensitivity().inputs().get(i).key(),
                    Console.orNull(columns.get(i).at(track)));
        }
        return json;
    }
}
