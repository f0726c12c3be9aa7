package rakeline.command;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.figure.Chart;
import rakeline.figure.Column;
import rakeline.figure.Figure;
import rakeline.figure.SweepChart;
import rakeline.figure.Table;
import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.quantity.Measure;
import rakeline.quantity.Refusal;
import rakeline.study.Crew;
import rakeline.study.Mode;
import rakeline.study.Relative;
import rakeline.study.Sweep;
import rakeline.study.Swept;
import rakeline.study.Vocabulary;

/** Sweeps one input of a bike and prints, writes or draws what follows. */
@Command(
        name = "sweep",
        description = "Sweeps one input of a bike across a range and tracks measures.",
        footer = {
            "",
            "Wheels, fork.axleToCrownMm and fork.sagMm are refitted to the rigid frame, anything else is redrawn;",
            "--as says otherwise. A refit's CSV has one more column, \"as\".",
            "--json prints {\"bike\", \"vary\", \"as\", \"held\": null or {\"key\", \"value\", \"by\"}, \"columns\": [{\"key\",",
            "\"label\", \"unit\", \"values\"}], \"gaps\": [{\"step\", \"key\", \"reason\"}]}."
        })
final class SweepCommand extends Work {
    @Mixin
    private Subject subject = new Subject();

    @Option(
            names = "--vary",
            required = true,
            paramLabel = "KEY=FROM:TO[:STEP]",
            description = "The input that is swept, both ends included; 201 values without a step.")
    private String vary;

    @Mixin
    private HoldOption hold = new HoldOption();

    @Mixin
    private TrackOption track = new TrackOption();

    @Mixin
    private AsOption as = new AsOption();

    @Option(names = "--percent", description = "Gives what is tracked as its change against the bike as it is.")
    private boolean percent;

    @Option(
            names = "--uncertainty",
            description = "Carries the standard uncertainties of the inputs along, to first order: a band about each"
                    + " curve, a column more for each of --track.")
    private boolean uncertainty;

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    SweepCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Sweep sweep = sweep(subject.ride(this::notice));
        Swept swept = uncertainty
                ? sweep.runWithUncertainty(Crew.onAllCores(), progress())
                : sweep.run(Crew.onAllCores(), progress());
        Chart chart = SweepChart.of(swept);
        output.give(console(), chart, named(swept, chart), chart, () -> asJson(swept, chart));
        swept.gaps().forEach(gap -> console().message(sentence(swept, gap)));
        return DONE;
    }

    private Sweep sweep(Ride of) {
        Vary varied = Vary.of(vary, Vary.STEPPED);
        if (!track.isGiven()) {
            throw new Refusal("--track is missing; accepted are measures or inputs with commas between them.");
        }
        List<Measure<Ride>> tracks = track.given(vocabulary).stream()
                .map(measure -> percent ? Relative.to(of, measure) : measure)
                .toList();
        return new Sweep(
                of,
                varied.setting(),
                varied.steps(),
                as.varied(varied.setting()).mode(),
                hold.hold(vocabulary),
                tracks);
    }

    /** A refit says so in a column of its own. */
    private static Figure named(Swept swept, Chart chart) {
        if (swept.sweep().mode() == Mode.REDRAW) {
            return chart;
        }
        List<Column> columns = new ArrayList<>(chart.columns());
        columns.add(Column.ofWords("as", "As", Collections.nCopies(chart.steps().size(), Mode.REFIT.word())));
        return new Table(chart.title(), columns, chart.held(), chart.cautions(), chart.basis());
    }

    private static Map<String, Object> asJson(Swept swept, Chart chart) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bike", swept.sweep().bike().name());
        json.put("title", swept.title());
        json.put("vary", swept.sweep().vary().key());
        json.put("as", swept.sweep().mode().word());
        json.put("held", swept.sweep().hold().map(FigureJson::hold).orElse(null));
        json.put("columns", chart.columns().stream().map(FigureJson::column).toList());
        json.put("gaps", swept.gaps().stream().map(gap -> asJson(swept, gap)).toList());
        return json;
    }

    private static Map<String, Object> asJson(Swept swept, Swept.Gap gap) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("step", swept.sweep().steps().at(gap.step()));
        json.put("key", gap.key());
        json.put("reason", gap.reason());
        return json;
    }

    private static String sentence(Swept swept, Swept.Gap gap) {
        return swept.sweep().vary().key() + " = "
                + Decimals.shortest(swept.sweep().steps().at(gap.step())) + ": "
                + (gap.key().equals(swept.sweep().vary().key()) ? "" : gap.key() + " ") + gap.reason();
    }
}
