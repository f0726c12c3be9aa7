package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.figure.MeasureTable;
import rakeline.figure.TextTable;
import rakeline.handling.Ride;
import rakeline.quantity.Reading;
import rakeline.quantity.Sentences;
import rakeline.study.Vocabulary;

/** Prints every measure of a bike. */
@Command(
        name = "measure",
        description = "Prints every measure of a bike that its numbers suffice for.",
        footer = {"", "--json prints {\"bike\": name, \"measures\": {key: number or null}}, in full precision."})
final class MeasureCommand extends Work {
    @Mixin
    private Subject subject = new Subject();

    @Option(names = "--json", description = "Prints JSON.")
    private boolean json;

    private final Vocabulary vocabulary;

    MeasureCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Ride ride = subject.ride(this::notice);
        if (ride.massKg() instanceof Reading.Nowhere nowhere) {
            notice(unweighed(nowhere));
        }
        if (json) {
            Map<String, Object> answer = new LinkedHashMap<>();
            answer.put("bike", ride.bike().name());
            answer.put("measures", numbers(vocabulary, ride));
            console().json(answer);
        } else {
            console().data().print(TextTable.write(MeasureTable.of(vocabulary, List.of(ride))));
        }
        return DONE;
    }

    /** Why all that rests on masses is left out. */
    static String unweighed(Reading.Nowhere reason) {
        return Sentences.upper(reason.reason()) + "; what the bicycle does by itself and in a turn is left out.";
    }

    /** Every measure that the bike has inputs for; null where it has no value. */
    static Map<String, Double> numbers(Vocabulary vocabulary, Ride ride) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        vocabulary.readings(ride).forEach((key, reading) -> {
            if (!(reading instanceof Reading.Lacking)) {
                numbers.put(key, Console.orNull(reading.orNaN()));
            }
        });
        return numbers;
    }
}
