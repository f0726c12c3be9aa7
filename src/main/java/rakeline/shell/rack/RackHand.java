package rakeline.shell.rack;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.BikeWriter;
import rakeline.geometry.Bike;
import rakeline.quantity.Refusal;
import rakeline.shell.look.Ask;
import rakeline.shell.look.Look;

/** What a person can do on the rack, with what is asked on the way. */
public final class RackHand {
    private final Look look;
    private final RackStore store;
    private final RackStock stock;
    private final RackPane pane;

    /** Something to do, in words. */
    record Doing(String words, Runnable work) {}

    RackHand(Look look, RackStore store, RackStock stock, RackPane pane) {
        this.look = look;
        this.store = store;
        this.stock = stock;
        this.pane = pane;
    }

    /** What is done with bikes as wholes, in the order of its list. */
    List<Doing> onBikes() {
        return List.of(
                new Doing("Add bikes that come with the program…", this::addBundled),
                new Doing("Add bike files…", this::addFiles),
                new Doing("New bike", this::begin),
                new Doing("Duplicate the bike", this::duplicate),
                new Doing("Rename the bike…", this::rename),
                new Doing("Remove from the rack", this::remove),
                new Doing("Import a chart…", this::importChart),
                new Doing("Export…", this::export));
    }

    private Optional<RackBike> first() {
        return pane.selected().stream().findFirst();
    }

    private void withFirst(java.util.function.Consumer<RackBike> work) {
        first().ifPresentOrElse(work, () -> store.say("Select a bike on the rack first."));
    }

    public void begin() {
        if (pane.leave()) {
            store.begin();
            pane.enterLast();
        }
    }

    public void duplicate() {
        if (pane.leave()) {
            withFirst(stock::duplicate);
        }
    }

    public void rename() {
        withFirst(row -> Optional.ofNullable((String) JOptionPane.showInputDialog(
                        pane, "Name of the bike", "Rename", JOptionPane.PLAIN_MESSAGE, null, null, row.name()))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .ifPresent(name -> store.tell(new RackEvent.Renamed(row.id(), name))));
    }

    /** Takes the selected bikes off the rack; an undo puts them back. */
    public void remove() {
        if (pane.selected().isEmpty()) {
            store.say("Select a bike on the rack first.");
        } else if (pane.leave()) {
            store.takeOff(pane.selected());
        }
    }

    /** Lets the person choose among the bikes that come with the program. */
    public void addBundled() {
        Map<String, String> paths = RackStock.bundledBikes();
        JList<String> list = new JList<>(paths.keySet().toArray(String[]::new));
        list.setName("bundled bikes");
        list.getAccessibleContext().setAccessibleName("Bikes that come with the program");
        list.setVisibleRowCount(14);
        list.setFixedCellWidth(look.px(300));
        Ask.first(list);
        list.setSelectedIndex(0);
        int answer = Ask.among(pane, new JScrollPane(list), "Bikes that come with the program", 0, "Add", "Cancel");
        if (answer == 0) {
            List<String> chosen =
                    list.getSelectedValuesList().stream().map(paths::get).toList();
            stock.add(chosen);
        }
    }

    public void addFiles() {
        take(store.host().filesToOpen("Bikes", BikeFile.ENDING));
    }

    /** Takes files in: bikes onto the rack, a chart through its preview. */
    void take(List<Path> files) {
        List<Path> charts = files.stream()
                .filter(file -> file.toString().endsWith(RackStock.CSV))
                .toList();
        List<Path> bikes = files.stream().filter(file -> !charts.contains(file)).toList();
        if (!bikes.isEmpty()) {
            stock.take(bikes);
        }
        charts.forEach(file -> stock.read(file, bytes -> preview(bytes, String.valueOf(file.getFileName()))));
    }

    public void importChart() {
        take(store.host().filesToOpen("Charts", RackStock.CSV));
    }

    private void preview(byte[] bytes, String file) {
        try {
            ChartPreview.ask(pane, look, bytes, file).ifPresent(this::keep);
        } catch (Refusal noChart) {
            store.say(noChart.getMessage());
        }
    }

    private void keep(List<Bike> bikes) {
        if (bikes.isEmpty()) {
            store.say(
                    "Nothing was put on the rack: in every size of the chart a cell is doubtful or a number is missing.");
        } else {
            stock.create(bikes);
        }
    }

    /** Pastes a chart with headings as new bikes, a block of numbers into the cells from the one at hand on. */
    void paste(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        try {
            if (RackStock.isChart(text)) {
                preview(bytes, "what was pasted");
            } else if (pane.leave()) {
                store.tell(new RackEvent.Pasted(pane.cell()[0], pane.cell()[1], text));
            }
        } catch (Refusal refusal) {
            store.say(refusal.getMessage());
        }
    }

    public void export() {
        List<RackBike> rows = pane.selected().isEmpty() ? store.rows() : pane.selected();
        List<Bike> bikes = rows.stream().flatMap(row -> row.bike().stream()).toList();
        if (bikes.isEmpty()) {
            store.say("The rack has no bike to export.");
            return;
        }
        String name = bikes.size() == 1 ? BikeWriter.fileName(bikes.get(0).name()) : "bikes" + RackStock.CSV;
        store.host()
                .fileToSave(name, "One table as CSV, or bike files", "")
                .ifPresent(file -> stock.export(bikes, file));
    }

    public void chooseColumns() {
        ColumnChoice.ask(pane, look, store.state().columns())
                .ifPresent(keys -> store.choose(choices -> choices.withColumns(keys)));
    }

    public void compare() {
        pane.compare();
    }

    public void match() {
        pane.match();
    }
}
