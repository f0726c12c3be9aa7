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
    private final RackDesk desk;
    private final RackStock stock;
    private final RackPane pane;

    /** Something to do, in words. */
    record Doing(String words, Runnable work) {}

    RackHand(Look look, RackDesk desk, RackStock stock, RackPane pane) {
        this.look = look;
        this.desk = desk;
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

    private Optional<RackRow> first() {
        return pane.selected().stream().findFirst();
    }

    private void withFirst(java.util.function.Consumer<RackRow> work) {
        first().ifPresentOrElse(work, () -> desk.say("Select a bike on the rack first."));
    }

    public void begin() {
        if (pane.leave()) {
            desk.begin();
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
                .ifPresent(name -> desk.rename(row.id(), name)));
    }

    /** Takes the selected bikes off the rack; asks only where numbers would be lost that no file holds. */
    public void remove() {
        List<RackRow> rows = pane.selected();
        boolean loses = rows.stream().anyMatch(row -> !row.waiting().isEmpty());
        if (rows.isEmpty()) {
            desk.say("Select a bike on the rack first.");
        } else if (!loses || mayLose()) {
            pane.leave();
            stock.remove(rows);
        }
    }

    private boolean mayLose() {
        return Ask.among(
                        pane,
                        "Numbers were typed that no file holds yet; they would be lost.",
                        "Remove from the rack",
                        1,
                        "Take it off",
                        "Cancel")
                == 0;
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
            stock.add(chosen, RackStock.counted(chosen.size()) + " put on the rack");
        }
    }

    public void addFiles() {
        take(desk.host().filesToOpen("Bikes", BikeFile.ENDING));
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
        take(desk.host().filesToOpen("Charts", RackStock.CSV));
    }

    private void preview(byte[] bytes, String file) {
        try {
            ChartPreview.ask(pane, look, bytes, file).ifPresent(this::keep);
        } catch (Refusal noChart) {
            desk.say(noChart.getMessage());
        }
    }

    private void keep(List<Bike> bikes) {
        if (bikes.isEmpty()) {
            desk.say("Nothing was put on the rack, since a cell of the chart is doubtful or a number is missing.");
        } else {
            stock.create(bikes, RackStock.counted(bikes.size()) + " put on the rack");
        }
    }

    /** Pastes a chart with headings as new bikes, a block of numbers into the cells from the one at hand on. */
    void paste(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        try {
            if (RackStock.isChart(text)) {
                preview(bytes, "what was pasted");
            } else if (pane.leave()) {
                desk.paste(pane.cell()[0], pane.cell()[1], text);
            }
        } catch (Refusal refusal) {
            desk.say(refusal.getMessage());
        }
    }

    public void export() {
        List<RackRow> rows = pane.selected().isEmpty() ? desk.model().rows() : pane.selected();
        List<Bike> bikes = rows.stream().flatMap(row -> row.bike().stream()).toList();
        if (bikes.isEmpty()) {
            desk.say("The rack has no bike to export.");
            return;
        }
        String name = bikes.size() == 1 ? BikeWriter.fileName(bikes.get(0).name()) : "bikes" + RackStock.CSV;
        desk.host()
                .fileToSave(name, "One table as CSV, or bike files", "")
                .ifPresent(file -> stock.export(bikes, file));
    }

    public void chooseColumns() {
        ColumnChoice.ask(pane, look, desk.model().columns()).ifPresent(desk::choose);
    }

    public void compare() {
        pane.compare();
    }

    public void match() {
        pane.match();
    }
}
