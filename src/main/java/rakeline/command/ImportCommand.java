package rakeline.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.catalogue.BikeWriter;
import rakeline.catalogue.Bytes;
import rakeline.catalogue.chart.ChartFile;
import rakeline.catalogue.chart.ChartImport;
import rakeline.desk.SafeFile;
import rakeline.desk.Together;
import rakeline.figure.BikeDrawing;
import rakeline.figure.BikesTable;
import rakeline.figure.TextTable;
import rakeline.geometry.Bike;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Refusal;

/** Reads a maker's chart into bike files. */
@Command(
        name = "import",
        description = "Reads a chart (CSV, one row or one column a size) and shows what was understood of it.",
        footer = {
            "",
            "Headings are keys of a bike file, or words such as stack, reach, HTA, STA, chainstay, BB drop, rake, ETT,",
            "head tube, fork length, wheelbase, tyre, wheel; units mm, cm, in stand in the heading, in a row or column",
            "of units, or in the cell. A chart without stack and reach is solved for them. Without --out nothing is",
            "written; with it <name>.bike.json for each size but those with a doubtful cell, all of them or none.",
            "Exit 1 where a cell is doubtful. The steps that the chart rounds to are read off its digits. --csv writes the sizes as export does, --svg their side views.",
            "--json prints {\"bikes\": [bike file…], \"understood\": [{\"place\",",
            "\"heading\", \"key\", \"unit\"}], \"leftOut\": [{\"place\", \"text\", \"reason\"}], \"notes\": [sentence…],",
            "\"doubts\": [{\"place\", \"text\", \"reason\"}], \"written\": [path…]}."
        })
final class ImportCommand extends Work {
    @Parameters(paramLabel = "CSV", description = "A chart.")
    private String csv;

    @Option(names = "--set", paramLabel = "KEY=VALUE", description = "A number for every size, over the chart's.")
    private List<String> set = List.of();

    @Option(names = "--name", paramLabel = "SERIES", description = "Put before each size: Road for Road M.")
    private String series = "";

    @Option(names = "--out", paramLabel = "DIR", description = "Writes a bike file for each size.")
    private String out;

    @Option(names = "--replace", description = "Lets --out replace files that are there.")
    private boolean replace;

    @Mixin
    private Output output = new Output();

    ImportCommand(Console console) {
        super(console);
    }

    @Override
    int work() {
        ChartImport chart = read();
        List<Path> written = out == null || chart.bikes().isEmpty() ? List.of() : write(chart.bikes());
        output.give(
                console(),
                BikeDrawing.sideView(chart.bikes().stream().map(Ride::of).toList()),
                BikesTable.records(chart.bikes()),
                () -> text(chart, written),
                () -> asJson(chart, written));
        chart.doubts().forEach(doubt -> console().message(doubt.sentence()));
        if (chart.isWhole()) {
            return DONE;
        }
        console()
                .message("A size with a doubtful cell is left out; a number that the chart does not give can be said"
                        + " for every size with --set KEY=VALUE.");
        return FAILED;
    }

    private ChartImport read() {
        Path path = Paths.of(csv);
        String file = path.getFileName() == null ? csv : path.getFileName().toString();
        int dot = file.lastIndexOf('.');
        return ChartFile.read(
                Bytes.read(path, ChartFile.SIZE_LIMIT),
                csv,
                new ChartImport.Wanted(
                        dot > 0 ? file.substring(0, dot) : file,
                        series,
                        Setting.changes(KeyValue.numbers("--set", set))));
    }

    private List<Path> write(List<Bike> bikes) {
        Path folder = Paths.folder(out);
        Map<Path, byte[]> contents = new LinkedHashMap<>();
        bikes.forEach(bike -> contents.put(folder.resolve(BikeWriter.fileName(bike.name())), BikeWriter.write(bike)));
        checkFree(folder, bikes);
        Together.write(SafeFile.onDisk(), contents);
        return new ArrayList<>(contents.keySet());
    }

    private void checkFree(Path folder, List<Bike> bikes) {
        Map<String, String> names = new TreeMap<>();
        for (Bike bike : bikes) {
            String file = BikeWriter.fileName(bike.name());
            String other = names.put(file.toLowerCase(Locale.ROOT), bike.name());
            if (other != null) {
                throw new Refusal(other + " and " + bike.name() + " would be the same file, " + file + ".");
            }
            if (!replace && SafeFile.onDisk().exists(folder.resolve(file))) {
                throw new Refusal(folder.resolve(file) + " is there already; --replace lets it be replaced.");
            }
        }
    }

    private static String text(ChartImport chart, List<Path> written) {
        List<String> lines = new ArrayList<>();
        chart.understood().forEach(heading -> lines.add(understood(heading)));
        chart.leftOut().forEach(heading -> lines.add("Left out: " + heading.sentence()));
        lines.addAll(chart.notes());
        written.forEach(file -> lines.add("Written: " + file));
        String table = chart.bikes().isEmpty() ? "" : TextTable.write(BikesTable.sideBySide(chart.bikes())) + "\n";
        return table + lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private static String understood(ChartImport.Understood heading) {
        return heading.place() + " \"" + heading.heading() + "\" is " + heading.key()
                + (heading.unit().isEmpty() ? "" : ", in " + heading.unit()) + ".";
    }

    private static Map<String, Object> asJson(ChartImport chart, List<Path> written) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bikes", chart.bikes().stream().map(BikeWriter::tree).toList());
        json.put("understood", chart.understood());
        json.put("leftOut", chart.leftOut());
        json.put("notes", chart.notes());
        json.put("doubts", chart.doubts());
        json.put("written", written.stream().map(Path::toString).toList());
        return json;
    }
}
