package rakeline.shell.rack;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import rakeline.catalogue.Bundled;
import rakeline.catalogue.RiderFile;
import rakeline.geometry.Hands;
import rakeline.rider.Rider;

/** Above the rack: the unit of lengths, who rides the bikes, and where the hands are. */
final class SeatChoice {
    private final RackStore store;
    private final JComboBox<LengthUnit> lengths = new JComboBox<>(LengthUnit.values());
    private final JComboBox<Choice<Seated>> rider = new JComboBox<>();
    private final JComboBox<Hands> hands = new JComboBox<>(Hands.values());
    private final Filling filling = new Filling();
    private final Troubles troubles;

    /**
     * A rider to be chosen.
     *
     * @param path of the rider's file; empty for nobody
     */
    private record Seated(String path, Optional<Rider> rider) {
        static final Seated NOBODY = new Seated("", Optional.empty());

        static Seated of(BikeFiles.Choosable<Rider> one) {
            return new Seated(one.path(), Optional.of(one.thing()));
        }

        Choice<Seated> words() {
            return new Choice<>(rider.map(Rider::name).orElse("none"), this);
        }
    }

    SeatChoice(RackStore store) {
        this.store = store;
        troubles = new Troubles(store::say);
        lengths.addActionListener(
                event -> filling.chosen(() -> store.in(lengths.getItemAt(lengths.getSelectedIndex()))));
        rider.addActionListener(event -> filling.chosen(this::seat));
        hands.addActionListener(event ->
                filling.chosen(() -> store.choose(choices -> choices.with(hands.getItemAt(hands.getSelectedIndex())))));
        hands.setRenderer(new DefaultListCellRenderer() {
            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean isSelected, boolean hasFocus) {
                return super.getListCellRendererComponent(
                        list, value instanceof Hands some ? some.word() : value, index, isSelected, hasFocus);
            }
        });
        filling.fill(() -> rider.addItem(Seated.NOBODY.words()));
    }

    void putIn(Lines line) {
        line.labelled("Lengths in", lengths, "rack lengths");
        line.labelled("Rider", rider, "rack rider");
        line.labelled("Hands on", hands, "rack hands");
    }

    /** Shows what is chosen now. */
    void refresh() {
        filling.fill(this::show);
    }

    private void show() {
        RackChoices choices = store.state().choices();
        for (int i = 0; i < rider.getItemCount(); i++) {
            if (rider.getItemAt(i).value().path().equals(choices.riderPath())) {
                rider.setSelectedIndex(i);
            }
        }
        hands.setSelectedItem(choices.hands());
        lengths.setSelectedItem(choices.lengths());
    }

    private void seat() {
        Seated seated = rider.getItemAt(Math.max(0, rider.getSelectedIndex())).value();
        store.choose(choices -> choices.seating(seated.path(), seated.rider()));
    }

    /** Offers the riders whose files lie in the folders now, and those that come with the program. */
    void listRiders() {
        BikeFiles files = store.files();
        store.host()
                .aside(
                        () -> files.offered(Bundled.RIDERS, RiderFile.SIZE_LIMIT, RiderFile::read),
                        this::listRiders,
                        store::say);
    }

    private void listRiders(BikeFiles.Offered<Rider> offered) {
        List<Seated> all = new ArrayList<>(List.of(Seated.NOBODY));
        offered.things().forEach(one -> all.add(Seated.of(one)));
        RackChoices choices = store.state().choices();
        all.stream()
                .filter(one -> one.path().equals(choices.riderPath()))
                .findFirst()
                .ifPresentOrElse(
                        now -> seatAgain(choices, now),
                        () -> all.add(new Seated(choices.riderPath(), choices.rider())));
        filling.fill(() -> {
            rider.removeAllItems();
            all.stream()
                    .filter(one -> one.path().isEmpty() || one.rider().isPresent())
                    .forEach(one -> rider.addItem(one.words()));
            show();
        });
        troubles.say(offered.troubles());
    }

    /** Who sits on the bikes is as the file says now. */
    private void seatAgain(RackChoices before, Seated now) {
        if (!now.rider().equals(before.rider())) {
            store.choose(choices -> choices.seating(now.path(), now.rider()));
        }
    }
}
