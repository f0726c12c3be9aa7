package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.figure.StudyTables;
import rakeline.quantity.Numbers;
import rakeline.study.Crew;
import rakeline.study.Solve;
import rakeline.study.Solved;
import rakeline.study.Span;
import rakeline.study.Target;
import rakeline.study.Vocabulary;

/** Looks for the values of two inputs at which two measures hit their targets. */
@Command(
        name = "solve",
        description = "Finds the values of two inputs (or one to four) at which as many measures hit their targets.",
        footer = {
            "",
            "The solution continuous with the bike as it is comes first, the others by distance from it.",
            "--json prints {\"bike\", \"solutions\": [{\"values\": {key: number}, \"measures\": {key: number}}...], \"nearest\":",
            "null or {\"values\", \"measures\", \"missed\": {key: number}}, \"ranges\": {key: [from, to]}, \"as\": {key: word},",
            "\"targets\": {key: number}}; nearest where there is no solution: the sum of the squared misses is least there."
        })
final class SolveCommand extends Work {
    @Mixin
    private Subject subject = new Subject();

    @Option(
            names = "--vary",
            required = true,
            paramLabel = "KEY[=FROM:TO]",
            description = "An input to solve for; without a range, all that is accepted.")
    private List<String> vary = List.of();

    @Option(names = "--target", required = true, paramLabel = "MEASURE=VALUE", description = "What is to be hit.")
    private List<String> target = List.of();

    @Mixin
    private AsOption as = new AsOption();

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    SolveCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        List<Span> spans =
                vary.stream().map(one -> Vary.of(one, Vary.KEY).span(as)).toList();
        List<Target> targets = target.stream()
                .map(one -> Wanted.of("--target", one).target(vocabulary))
                .toList();
        Solved solved = new Solve(subject.ride(this::notice), spans, targets).run(Crew.onAllCores(), progress());
        output.give(console(), StudyTables.of(solved), () -> asJson(solved));
        return DONE;
    }

    private static Map<String, Object> asJson(Solved solved) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bike", solved.solve().start().bike().name());
        json.put(
                "solutions",
                solved.solutions().stream().map(place -> asJson(solved, place)).toList());
        json.put(
                "nearest", solved.nearest().map(place -> missing(solved, place)).orElse(null));
        json.put("ranges", bySpan(solved, span -> List.of(span.from(), span.to())));
        json.put("as", bySpan(solved, span -> span.varied().mode().word()));
        json.put("targets", byTarget(solved, targets(solved)));
        return json;
    }

    private static Map<String, Object> bySpan(Solved solved, Function<Span, Object> value) {
        Map<String, Object> json = new LinkedHashMap<>();
        solved.solve().spans().forEach(span -> json.put(span.key(), value.apply(span)));
        return json;
    }

    private static Numbers targets(Solved solved) {
        List<Target> targets = solved.solve().targets();
        return Numbers.generate(targets.size(), i -> targets.get(i).value());
    }

    private static Map<String, Object> missing(Solved solved, Solved.Place place) {
        Map<String, Object> json = asJson(solved, place);
        json.put("missed", byTarget(solved, place.missed()));
        return json;
    }

    private static Map<String, Object> asJson(Solved solved, Solved.Place place) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (int i = 0; i < place.values().size(); i++) {
            values.put(solved.solve().spans().get(i).key(), place.values().at(i));
        }
        Numbers measures = Numbers.generate(
                place.missed().size(),
                i -> solved.solve().targets().get(i).value() + place.missed().at(i));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("values", values);
        json.put("measures", byTarget(solved, measures));
        return json;
    }

    private static Map<String, Object> byTarget(Solved solved, Numbers numbers) {
        Map<String, Object> json = new LinkedHashMap<>();
        for (int i = 0; i < numbers.size(); i++) {
            json.put(solved.solve().targets().get(i).key(), numbers.at(i));
        }
        return json;
    }
}
