package rakeline.command;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.desk.SafeFile;
import rakeline.figure.Chart;
import rakeline.figure.Column;
import rakeline.figure.Csv;
import rakeline.figure.Figure;
import rakeline.figure.SweepChart;
import rakeline.figure.Table;
import rakeline.figure.TextTable;
import rakeline.figure.paint.Palette;
import rakeline.figure.paint.Svg;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.quantity.Measure;
import rakeline.quantity.Refusal;
import rakeline.study.Hold;
import rakeline.study.Mode;
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
    private static final int SVG_WIDTH = 800;

    @Mixin
    private Subject subject = new Subject();

    @Option(
            names = "--vary",
            required = true,
            paramLabel = "KEY=FROM:TO[:STEP]",
            description = "The input that is swept, both ends included; 201 values without a step.")
    private String vary;

    @Option(names = "--hold", paramLabel = "MEASURE[=VALUE]", description = "Held, at its starting value or this one.")
    private String hold;

    @Option(names = "--by", paramLabel = "KEY", description = "The input that is solved for to hold it.")
    private String by;

    @Option(
            names = "--track",
            required = true,
            split = ",",
            paramLabel = "KEY",
            description = "Measures, or inputs, to follow.")
    private List<String> track = List.of();

    @Option(names = "--as", paramLabel = "WAY", description = "refit or redraw.")
    private String as;

    @Option(names = "--csv", paramLabel = "FILE", description = "Writes CSV; - is standard output.")
    private String csv;

    @Option(names = "--svg", paramLabel = "FILE", description = "Writes the chart.")
    private String svg;

    @Option(names = "--json", description = "Prints JSON.")
    private boolean json;

    private final Vocabulary vocabulary;

    SweepCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Swept swept = sweep(subject.ride()).run();
        Chart chart = SweepChart.of(swept);
        write(swept, chart);
        swept.gaps().forEach(gap -> console().message(sentence(swept, gap)));
        return DONE;
    }

    private Sweep sweep(Ride of) {
        int equals = vary.indexOf('=');
        if (equals < 1) {
            throw new Refusal("--vary is " + vary + "; accepted is KEY=FROM:TO:STEP.");
        }
        Setting setting = Setting.of(vary.substring(0, equals));
        Mode mode = as == null ? Mode.usualFor(setting) : Mode.of(as);
        List<Measure<Ride>> tracks =
                track.stream().map(String::trim).map(vocabulary::tracked).toList();
        return new Sweep(
                of,
                setting,
                StepsArgument.of("--vary", vary.substring(equals + 1), "KEY=FROM:TO:STEP"),
                mode,
                held(),
                tracks);
    }

    private Optional<Hold> held() {
        if (hold == null && by == null) {
            return Optional.empty();
        }
        if (hold == null || by == null) {
            throw new Refusal("--hold and --by belong together: what is held, and the input that is solved for.");
        }
        int equals = hold.indexOf('=');
        double target = equals < 0 ? Double.NaN : Console.number(hold.substring(equals + 1), "--hold " + hold);
        String key = equals < 0 ? hold : hold.substring(0, equals);
        return Optional.of(new Hold(vocabulary.measure(key), target, Setting.of(by)));
    }

    /** Files first: where one cannot be written, nothing is printed. */
    private void write(Swept swept, Chart chart) {
        if (csv != null && !csvIsPrinted()) {
            SafeFile.onDisk()
                    .write(Paths.of(csv), Csv.write(named(swept, chart)).getBytes(StandardCharsets.UTF_8));
        }
        if (svg != null) {
            SafeFile.onDisk().write(Paths.of(svg), Svg.bytes(chart, SVG_WIDTH, Palette.LIGHT));
        }
        print(swept, chart);
    }

    private void print(Swept swept, Chart chart) {
        if (json) {
            console().json(asJson(swept, chart));
        }
        if (csvIsPrinted()) {
            console().data().print(Csv.write(named(swept, chart)));
        }
        if (!json && csv == null && svg == null) {
            console().data().print(TextTable.write(chart));
        }
    }

    private boolean csvIsPrinted() {
        return "-".equals(csv);
    }

    /** A refit says so in a column of its own. */
    private static Figure named(Swept swept, Chart chart) {
        if (swept.sweep().mode() == Mode.REDRAW) {
            return chart;
        }
        List<Column> columns = new ArrayList<>(chart.columns());
        columns.add(Column.ofWords(
                "as", "As", java.util.Collections.nCopies(chart.steps().size(), Mode.REFIT.word())));
        return new Table(chart.title(), columns, chart.held(), chart.cautions());
    }

    private static Map<String, Object> asJson(Swept swept, Chart chart) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bike", swept.sweep().bike().name());
        json.put("title", swept.title());
        json.put("vary", swept.sweep().vary().key());
        json.put("as", swept.sweep().mode().word());
        json.put("held", swept.sweep().hold().map(SweepCommand::asJson).orElse(null));
        json.put("columns", chart.columns().stream().map(FigureJson::column).toList());
        json.put("gaps", swept.gaps().stream().map(gap -> asJson(swept, gap)).toList());
        return json;
    }

    private static Map<String, Object> asJson(Hold hold) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("key", hold.measure().key());
        json.put("value", hold.target());
        json.put("by", hold.by().key());
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
