package rakeline.shell.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import rakeline.catalogue.Bundled;
import rakeline.catalogue.PartsFile;
import rakeline.figure.BikeDrawing;
import rakeline.geometry.Bike;
import rakeline.geometry.parts.Stock;
import rakeline.quantity.Refusal;
import rakeline.shell.look.Look;
import rakeline.study.fit.Wanted;

/** How bikes are put side by side: whose contact points, which stock parts, drawn over each other where, all or the table's. */
final class PairingChoice {
    private final RackDesk desk;
    private final JComboBox<Choice<Optional<Wanted>>> contact = new JComboBox<>();
    private final JComboBox<Choice<Optional<Stock>>> parts = new JComboBox<>();
    private final JComboBox<BikeDrawing.At> at = new JComboBox<>(BikeDrawing.At.values());
    private final JCheckBox only = new JCheckBox("Only the table's columns");
    private final Runnable chosen;
    private final Filling filling = new Filling();
    private final Troubles troubles;

    /** @param chosen told when the person chooses another */
    PairingChoice(RackDesk desk, Runnable chosen) {
        this.desk = desk;
        troubles = new Troubles(desk::say);
        this.chosen = chosen;
        only.setName("rack only");
        only.setOpaque(false);
        contact.addActionListener(event -> tell());
        parts.addActionListener(event -> tell());
        at.addActionListener(event -> tell());
        only.addActionListener(event -> tell());
    }

    private void tell() {
        filling.chosen(chosen);
    }

    Lines line(Look look) {
        Lines line = new Lines(look);
        line.labelled("Contact points", contact, "rack contact");
        line.labelled("Stock parts", parts, "rack parts");
        line.labelled("Drawn over each other at", at, "rack at");
        line.add(only);
        return line;
    }

    BikeDrawing.At at() {
        return at.getItemAt(at.getSelectedIndex());
    }

    /** What is asked of bikes, as it is chosen now. */
    Pairing of(List<Bike> bikes) {
        Choice<Optional<Wanted>> points = contact.getItemAt(Math.max(0, contact.getSelectedIndex()));
        Choice<Optional<Stock>> some = parts.getItemAt(Math.max(0, parts.getSelectedIndex()));
        List<String> keys = only.isSelected()
                ? desk.model().columns().stream().map(RackColumn::key).toList()
                : List.of();
        return new Pairing(
                bikes,
                desk.seat(),
                points == null ? Optional.empty() : points.value(),
                some == null ? Optional.empty() : some.value(),
                keys);
    }

    /** Offers the stock parts whose files lie in the folders now, and those that come with the program. */
    void listParts() {
        RackFiles files = desk.files();
        desk.host()
                .aside(
                        () -> files.offered(Bundled.PARTS, PartsFile.SIZE_LIMIT, PartsFile::read),
                        this::listParts,
                        desk::say);
    }

    private void listParts(RackFiles.Offered<Stock> offered) {
        List<Choice<Optional<Stock>>> all = new ArrayList<>();
        all.add(new Choice<>("none: stem and spacers stay", Optional.empty()));
        offered.things().forEach(one -> all.add(new Choice<>(one.name(), Optional.of(one))));
        filling.fill(() -> Choice.fill(parts, all));
        troubles.say(offered.troubles());
    }

    /** Offers the contact points of the bikes that are on the rack now, and of the rider. */
    void refresh() {
        List<Choice<Optional<Wanted>>> all = new ArrayList<>();
        all.add(new Choice<>("each bike's own", Optional.empty()));
        desk.seat().rider().ifPresent(rider -> offer(all, rider.name(), () -> Wanted.of(rider)));
        desk.model().rows().forEach(row -> row.bike().ifPresent(bike -> offer(all, row.name(), () -> Wanted.of(bike))));
        filling.fill(() -> Choice.fill(contact, all));
    }

    private static void offer(List<Choice<Optional<Wanted>>> all, String name, Supplier<Wanted> points) {
        try {
            all.add(new Choice<>("those of " + name, Optional.of(points.get())));
        } catch (Refusal saysNowhere) {
            // a bike without contact points and bar has none to offer, and says so in its cells
        }
    }
}
