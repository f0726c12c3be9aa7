package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.figure.MapFigure;
import rakeline.figure.MapFigures;
import rakeline.quantity.Refusal;
import rakeline.study.Crew;
import rakeline.study.GridMap;
import rakeline.study.Mapped;
import rakeline.study.Vocabulary;

/** Maps one measure over two inputs. */
@Command(
        name = "map",
        description = "Maps one measure over two inputs of a bike: --vary twice.",
        footer = {
            "",
            "Wheels, fork.axleToCrownMm and fork.sagMm are refitted to the rigid frame, anything else is redrawn;",
            "--as says otherwise. CSV has one place a row: the two keys and the measure, the first input slowest.",
            "--json prints {\"bike\", \"title\", \"x\" and \"y\": {\"key\", \"label\", \"unit\", \"as\", \"here\", \"values\"},",
            "\"measure\": {\"key\", \"label\", \"unit\", \"here\"}, \"values\": [[number or null...]...] with a list for each x,",
            "\"gaps\": [{\"reason\", \"count\"}], \"held\": null or {\"key\", \"value\", \"by\"}, \"heldInWords\"}."
        })
final class MapCommand extends Work {
    static final int ROWS_PRINTED = 21;
    static final int COLUMNS_PRINTED = 6;

    @Mixin
    private Subject subject = new Subject();

    @Option(
            names = "--vary",
            required = true,
            paramLabel = "KEY=FROM:TO[:STEP]",
            description = "An input, both ends included; 61 values without a step.")
    private List<String> vary = List.of();

    @Option(names = "--track", required = true, paramLabel = "KEY", description = "The measure, or input, to map.")
    private String track;

    @Mixin
    private HoldOption hold = new HoldOption();

    @Mixin
    private AsOption as = new AsOption();

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    MapCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        if (vary.size() != 2) {
            throw new Refusal("--vary is given " + vary.size() + " times; accepted is twice.");
        }
        Mapped mapped = new GridMap(
                        subject.ride(this::notice),
                        axis(vary.get(0)),
                        axis(vary.get(1)),
                        vocabulary.tracked(track),
                        hold.hold(vocabulary))
                .run(Crew.onAllCores(), picture -> {}, progress());
        MapFigure figure = MapFigures.of(mapped);
        output.give(
                console(), figure, figure, figure.table(ROWS_PRINTED, COLUMNS_PRINTED), () -> asJson(mapped, figure));
        figure.gaps().forEach(console()::message);
        return DONE;
    }

    private GridMap.Axis axis(String argument) {
        Vary axis = Vary.of(argument, Vary.STEPPED);
        return axis.range().size() == 2
                ? GridMap.Axis.of(
                        as.varied(axis.setting()),
                        axis.range().get(0),
                        axis.range().get(1))
                : new GridMap.Axis(as.varied(axis.setting()), axis.steps());
    }

    private static Map<String, Object> asJson(Mapped mapped, MapFigure figure) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bike", mapped.map().start().bike().name());
        json.put("title", mapped.title());
        json.put("x", asJson(mapped.map().x(), figure.x()));
        json.put("y", asJson(mapped.map().y(), figure.y()));
        Map<String, Object> measure = FigureJson.quantity(figure.measure());
        measure.put("here", Console.orNull(figure.here()));
        json.put("measure", measure);
        json.put(
                "values",
                IntStream.range(0, figure.x().size())
                        .mapToObj(i -> column(figure, i))
                        .toList());
        json.put(
                "gaps",
                mapped.reasons().entrySet().stream().map(MapCommand::asJson).toList());
        json.put("held", mapped.map().hold().map(FigureJson::hold).orElse(null));
        json.put("heldInWords", mapped.held());
        return json;
    }

    private static List<Double> column(MapFigure figure, int i) {
        return IntStream.range(0, figure.y().size())
                .mapToObj(j -> Console.orNull(figure.at(i, j)))
                .toList();
    }

    private static Map<String, Object> asJson(GridMap.Axis axis, MapFigure.Axis shown) {
        Map<String, Object> json = FigureJson.quantity(shown.quantity());
        json.put("as", axis.varied().mode().word());
        json.put("here", Console.orNull(shown.here()));
        json.put("values", shown.steps().stream().boxed().toList());
        return json;
    }

    private static Map<String, Object> asJson(Map.Entry<String, Integer> reason) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("reason", reason.getKey());
        json.put("count", reason.getValue());
        return json;
    }
}
