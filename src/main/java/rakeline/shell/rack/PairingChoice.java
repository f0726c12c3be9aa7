package rakeline.shell.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import rakeline.catalogue.Bundled;
import rakeline.catalogue.PartsFile;
import rakeline.figure.BikeDrawing;
import rakeline.geometry.Bike;
import rakeline.geometry.parts.Stock;
import rakeline.quantity.Refusal;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.study.fit.Wanted;

/** How bikes are put side by side: whose contact points, which stock parts, drawn over each other where, all or the table's. */
final class PairingChoice {
    private final RackStore store;
    private final JComboBox<Choice<RackChoices.Contact>> contact = new JComboBox<>();
    private final JComboBox<Choice<String>> parts = new JComboBox<>();
    private final JComboBox<BikeDrawing.At> at = new JComboBox<>(BikeDrawing.At.values());
    private final JCheckBox only = new JCheckBox("Only the table's columns");
    private final JLabel shoe;
    private final Filling filling = new Filling();
    private final Troubles troubles;
    private List<BikeFiles.Choosable<Stock>> stocks = List.of();

    PairingChoice(Look look, RackStore store) {
        this.store = store;
        troubles = new Troubles(store::say);
        only.setName("rack only");
        only.setOpaque(false);
        shoe = Words.line("", look.softText(), look.ink());
        shoe.setName("rack shoe");
        contact.addActionListener(event -> chosen(choices -> choices.with(value(contact))));
        parts.addActionListener(event -> chosen(choices -> choices.withParts(value(parts))));
        at.addActionListener(event -> chosen(choices -> choices.drawn(at.getItemAt(at.getSelectedIndex()))));
        only.addActionListener(event -> chosen(choices -> choices.comparing(only.isSelected())));
    }

    private static <T> T value(JComboBox<Choice<T>> box) {
        return box.getItemAt(Math.max(0, box.getSelectedIndex())).value();
    }

    private void chosen(UnaryOperator<RackChoices> change) {
        filling.chosen(() -> store.choose(change));
    }

    Lines line(Look look) {
        Lines line = new Lines(look);
        line.labelled("Contact points", contact, "rack contact");
        line.labelled("Stock parts", parts, "rack parts");
        line.labelled("Drawn over each other at", at, "rack at");
        line.add(only);
        line.add(shoe);
        return line;
    }

    /** What is asked of bikes, as it is chosen now. */
    Pairing of(List<Bike> bikes) {
        RackChoices choices = store.state().choices();
        List<String> keys = choices.onlyColumns()
                ? choices.columns().stream().map(RackColumn::key).toList()
                : List.of();
        return new Pairing(bikes, choices.seat(), wanted(choices), stock(choices.parts()), keys, choices.lengths());
    }

    private Optional<Stock> stock(String path) {
        return stocks.stream()
                .filter(one -> one.path().equals(path))
                .map(BikeFiles.Choosable::thing)
                .findFirst();
    }

    private Optional<Wanted> wanted(RackChoices choices) {
        return switch (choices.contact().whose()) {
            case OWN -> Optional.empty();
            case RIDER -> choices.rider().flatMap(rider -> given(() -> Wanted.of(rider)));
            case BIKE ->
                store.rows().stream()
                        .filter(choices.contact()::isOf)
                        .findFirst()
                        .flatMap(RackBike::bike)
                        .flatMap(bike -> given(() -> Wanted.of(bike)));
        };
    }

    /** A bike without contact points and bar has none to offer, and says so in its cells. */
    private static Optional<Wanted> given(Supplier<Wanted> points) {
        try {
            return Optional.of(points.get());
        } catch (Refusal saysNowhere) {
            return Optional.empty();
        }
    }

    /** Offers the stock parts whose files lie in the folders now, and those that come with the program. */
    void listParts() {
        BikeFiles files = store.files();
        store.host()
                .aside(
                        () -> files.offered(Bundled.PARTS, PartsFile.SIZE_LIMIT, PartsFile::read),
                        this::listParts,
                        store::say);
    }

    private void listParts(BikeFiles.Offered<Stock> offered) {
        stocks = offered.things();
        refresh();
        troubles.say(offered.troubles());
    }

    /** Shows what can be chosen now, and what is. */
    void refresh() {
        RackChoices choices = store.state().choices();
        filling.fill(() -> {
            Choice.fill(contact, contacts(choices), choices.contact());
            Choice.fill(parts, parts(), choices.parts());
            at.setSelectedItem(choices.at());
            only.setSelected(choices.onlyColumns());
        });
        String whose = Labels.sentence(choices.seat().shoe());
        if (!shoe.getText().equals(whose)) {
            shoe.setText(whose);
            shoe.revalidate();
        }
    }

    private List<Choice<String>> parts() {
        List<Choice<String>> all = new ArrayList<>();
        all.add(new Choice<>("none: stem and spacers stay", ""));
        stocks.forEach(one -> all.add(new Choice<>(one.thing().name(), one.path())));
        return all;
    }

    /** The contact points of the bikes that are on the rack now, and of the rider. */
    private List<Choice<RackChoices.Contact>> contacts(RackChoices choices) {
        List<Choice<RackChoices.Contact>> all = new ArrayList<>();
        all.add(new Choice<>("each bike's own", RackChoices.Contact.OWN));
        choices.rider()
                .filter(rider -> given(() -> Wanted.of(rider)).isPresent())
                .ifPresent(rider -> all.add(new Choice<>("those of " + rider.name(), RackChoices.Contact.RIDER)));
        store.rows().stream()
                .filter(row ->
                        row.bike().flatMap(bike -> given(() -> Wanted.of(bike))).isPresent())
                .forEach(row -> all.add(new Choice<>("those of " + row.name(), RackChoices.Contact.of(row))));
        return all;
    }
}
