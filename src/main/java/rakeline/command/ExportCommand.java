package rakeline.command;

import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.catalogue.BikeWriter;
import rakeline.desk.SafeFile;
import rakeline.figure.BikesTable;
import rakeline.figure.Csv;
import rakeline.geometry.Bike;
import rakeline.geometry.Setting;

/** Writes bikes as CSV under a header of keys, or as JSON. */
@Command(
        name = "export",
        description = "Writes bikes as CSV under a header of keys, which import reads back as equal bikes.",
        footer = {"", "--json prints each bike's file as one object on a line of its own."})
final class ExportCommand extends Work {
    @Parameters(arity = "1..*", paramLabel = "BIKE", description = "Bike files (*.bike.json).")
    private List<String> files = List.of();

    @Option(names = "--set", paramLabel = "KEY=VALUE", description = "Redraws each bike with a number changed.")
    private List<String> changes = List.of();

    @Option(names = "--csv", paramLabel = "FILE", description = "Writes the CSV there; - is standard output (default).")
    private String csv = "-";

    @Option(names = "--json", description = "Prints JSON instead.")
    private boolean json;

    ExportCommand(Console console) {
        super(console);
    }

    @Override
    int work() {
        List<Bike> bikes = files.stream()
                .map(Paths::bike)
                .map(bike -> bike.redraw(Setting.changes(KeyValue.numbers("--set", changes))))
                .toList();
        if (json) {
            bikes.forEach(bike -> console().json(BikeWriter.tree(bike)));
        } else {
            write(Csv.write(BikesTable.records(bikes)));
        }
        return DONE;
    }

    private void write(String text) {
        if (csv.equals("-")) {
            console().data().print(text);
        } else {
            SafeFile.onDisk().write(Paths.of(csv), text.getBytes(StandardCharsets.UTF_8));
        }
    }
}
