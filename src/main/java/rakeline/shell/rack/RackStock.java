package rakeline.shell.rack;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.BikeWriter;
import rakeline.catalogue.Bundled;
import rakeline.catalogue.Roots;
import rakeline.catalogue.chart.ChartFile;
import rakeline.catalogue.chart.ChartImport;
import rakeline.desk.Together;
import rakeline.figure.BikesTable;
import rakeline.figure.Csv;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.quantity.Refusal;
import rakeline.shell.page.Bench;

/** Bikes coming onto the rack and going from it, each one step of the page. To be used on the event thread. */
final class RackStock {
    static final String CSV = ".csv";

    private final Bench bench;
    private final RackDesk desk;

    RackStock(Bench bench, RackDesk desk) {
        this.bench = bench;
        this.desk = desk;
    }

    /** A bike that comes with the program. */
    static Bike bundled(String path) {
        return BikeFile.read(Roots.bundled().read(path, BikeFile.SIZE_LIMIT), path);
    }

    /** The paths of the bikes that come with the program by their names, each kind from the smallest size to the largest. */
    static Map<String, String> bundledBikes() {
        Map<String, Bike> byPath = new LinkedHashMap<>();
        Bundled.BIKES.paths().forEach(path -> byPath.put(path, bundled(path)));
        Map<String, String> paths = new LinkedHashMap<>();
        byPath.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<String, Bike> each) -> kind(each.getValue()))
                        .thenComparing(each -> each.getValue().get(Inputs.STACK)))
                .forEach(each -> paths.put(each.getValue().name(), each.getKey()));
        return paths;
    }

    /** The name without the size at its end. */
    private static String kind(Bike bike) {
        return bike.name().replaceFirst(" [^ ]+$", "");
    }

    /** A copy of a bike, in a file of its own. */
    void duplicate(RackRow row) {
        row.bike().ifPresent(bike -> {
            Bike copy = bike.named(desk.model().freshName(row.name()));
            create(List.of(copy), copy.name() + " put on the rack");
        });
    }

    /** Puts bikes into files of their own and on the rack. */
    void create(List<Bike> bikes, String words) {
        RackFiles files = desk.files();
        put(() -> files.create(bikes), words);
    }

    /** Takes bike files in. */
    void take(List<Path> chosen) {
        RackFiles files = desk.files();
        put(() -> chosen.stream().map(files::take).toList(), counted(chosen.size()) + " put on the rack");
    }

    private void put(Supplier<List<RackRow>> work, String words) {
        desk.host().aside(work, rows -> add(paths(rows), words), bench::notice);
    }

    private static List<String> paths(List<RackRow> rows) {
        return rows.stream().map(RackRow::path).toList();
    }

    static String counted(int bikes) {
        return bikes == 1 ? "one bike" : bikes + " bikes";
    }

    /** Puts paths on the rack of the page. */
    void add(List<String> paths, String words) {
        bench.act(
                words,
                page -> page.withRack(Stream.concat(page.rack().stream(), paths.stream())
                        .distinct()
                        .toList()));
    }

    /** Takes bikes off the rack; their files stay, what has no file goes. */
    void remove(List<RackRow> rows) {
        List<String> paths = paths(rows);
        desk.drop(rows);
        if (!bench.model().page().rack().stream().noneMatch(paths::contains)) {
            bench.act(
                    counted(rows.size()) + " taken off the rack",
                    page -> page.withRack(page.rack().stream()
                            .filter(path -> !paths.contains(path))
                            .toList()));
        }
    }

    /** Whether a text is a chart with headings; a block of bare numbers is none. */
    static boolean isChart(String text) {
        try {
            ChartFile.read(text.getBytes(StandardCharsets.UTF_8), "", new ChartImport.Wanted("", "", Map.of()));
            return true;
        } catch (Refusal noChart) {
            return false;
        }
    }

    /** Reads a chart's file, then goes on with its bytes. */
    void read(Path file, Consumer<byte[]> then) {
        desk.host().aside(() -> desk.host().disk().read(file, (int) ChartFile.SIZE_LIMIT), then, bench::notice);
    }

    /** Writes bikes: one table where the file's name ends in .csv, else a bike file each beside one another. */
    void export(List<Bike> bikes, Path file) {
        String name = String.valueOf(file.getFileName());
        Map<Path, byte[]> contents = new LinkedHashMap<>();
        if (name.endsWith(CSV)) {
            contents.put(file, Csv.write(BikesTable.records(bikes)).getBytes(StandardCharsets.UTF_8));
        } else if (bikes.size() == 1) {
            contents.put(file, BikeWriter.write(bikes.get(0)));
        } else {
            bikes.forEach(bike ->
                    contents.put(file.resolveSibling(BikeWriter.fileName(bike.name())), BikeWriter.write(bike)));
        }
        desk.host()
                .aside(
                        () -> {
                            Together.write(desk.host().disk(), contents);
                            return contents.keySet();
                        },
                        written -> bench.say("written: "
                                + String.join(
                                        ", ",
                                        written.stream()
                                                .map(path -> String.valueOf(path.getFileName()))
                                                .toList())),
                        bench::notice);
    }
}
