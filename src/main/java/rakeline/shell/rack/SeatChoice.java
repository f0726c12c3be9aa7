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
    private final RackDesk desk;
    private final JComboBox<LengthUnit> lengths = new JComboBox<>(LengthUnit.values());
    private final JComboBox<Choice<Optional<Rider>>> rider = new JComboBox<>();
    private final JComboBox<Hands> hands = new JComboBox<>(Hands.values());
    private final Filling filling = new Filling();
    private final Troubles troubles;

    SeatChoice(RackDesk desk) {
        this.desk = desk;
        troubles = new Troubles(desk::say);
        lengths.addActionListener(
                event -> filling.chosen(() -> desk.in(lengths.getItemAt(lengths.getSelectedIndex()))));
        rider.addActionListener(event -> filling.chosen(this::seat));
        hands.addActionListener(event -> filling.chosen(this::seat));
        hands.setSelectedItem(Hands.HOODS);
        hands.setRenderer(new DefaultListCellRenderer() {
            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean isSelected, boolean hasFocus) {
                return super.getListCellRendererComponent(
                        list, value instanceof Hands some ? some.word() : value, index, isSelected, hasFocus);
            }
        });
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
        for (int i = 0; i < rider.getItemCount(); i++) {
            if (rider.getItemAt(i).value().equals(desk.seat().rider())) {
                rider.setSelectedIndex(i);
            }
        }
        hands.setSelectedItem(desk.seat().hands());
        lengths.setSelectedItem(desk.model().lengths());
    }

    private void seat() {
        Choice<Optional<Rider>> seated = rider.getItemAt(Math.max(0, rider.getSelectedIndex()));
        desk.seat(new RackSeat(
                seated == null ? Optional.empty() : seated.value(), hands.getItemAt(hands.getSelectedIndex())));
    }

    /** Offers the riders whose files lie in the folders now, and those that come with the program. */
    void listRiders() {
        RackFiles files = desk.files();
        desk.host()
                .aside(
                        () -> files.offered(Bundled.RIDERS, RiderFile.SIZE_LIMIT, RiderFile::read),
                        this::listRiders,
                        desk::say);
    }

    private void listRiders(RackFiles.Offered<Rider> offered) {
        List<Choice<Optional<Rider>>> all = new ArrayList<>();
        all.add(new Choice<>("none", Optional.empty()));
        riders(offered.things()).forEach(one -> all.add(new Choice<>(one.name(), Optional.of(one))));
        filling.fill(() -> {
            Choice.fill(rider, all);
            show();
        });
        troubles.say(offered.troubles());
    }

    /** One who sits on the bikes stays seated where the file is gone, and is as it says now where it has changed. */
    private List<Rider> riders(List<Rider> offered) {
        Optional<Rider> seated = desk.seat().rider().filter(one -> !offered.contains(one));
        Optional<Rider> changed = seated.flatMap(one -> offered.stream()
                .filter(other -> other.name().equals(one.name()))
                .findFirst());
        changed.ifPresent(
                other -> desk.seat(new RackSeat(Optional.of(other), desk.seat().hands())));
        List<Rider> all = new ArrayList<>(offered);
        seated.filter(one -> changed.isEmpty()).ifPresent(all::add);
        return all;
    }
}
