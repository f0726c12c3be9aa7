package rakeline.shell.rack;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
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
    private final RackStore store;

    RackStock(Bench bench, RackStore store) {
        this.bench = bench;
        this.store = store;
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
    void duplicate(RackBike row) {
        row.bike().ifPresent(bike -> create(List.of(bike)));
    }

    /** Puts bikes into files of their own and on the rack. */
    void create(List<Bike> bikes) {
        put(bikes.stream().map(RackEvent.NewBike::of).toList());
    }

    /** Puts bikes on the rack; none has the name of another. */
    void put(List<RackEvent.NewBike> bikes) {
        store.tell(new RackEvent.Put(bikes.stream().map(this::fresh).toList()));
    }

    private RackEvent.NewBike fresh(RackEvent.NewBike bike) {
        String name = store.state().freshName(bike.name());
        return new RackEvent.NewBike(name, bike.bike().map(one -> one.named(name)), bike.waiting());
    }

    /** Takes bike files in. */
    void take(List<Path> chosen) {
        BikeFiles files = store.files();
        store.host().aside(() -> chosen.stream().map(files::take).toList(), this::add, store::say);
    }

    /** Puts paths on the rack of the page. */
    void add(List<String> paths) {
        store.tell(new RackEvent.Added(paths));
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
        store.host().aside(() -> store.host().disk().read(file, (int) ChartFile.SIZE_LIMIT), then, store::say);
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
        store.host()
                .aside(
                        () -> {
                            Together.write(store.host().disk(), contents);
                            return contents.keySet();
                        },
                        written -> bench.say("written: "
                                + String.join(
                                        ", ",
                                        written.stream()
                                                .map(path -> String.valueOf(path.getFileName()))
                                                .toList())),
                        store::say);
    }
}
