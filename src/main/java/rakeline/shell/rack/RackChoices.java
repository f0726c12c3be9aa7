package rakeline.shell.rack;

import java.util.List;
import java.util.Optional;
import rakeline.desk.RackView;
import rakeline.figure.BikeDrawing;
import rakeline.geometry.Hands;
import rakeline.quantity.Refusal;
import rakeline.rider.Rider;

/**
 * What a person chose on the rack. Never changes.
 *
 * @param riderPath of the rider's file; empty for none
 * @param rider as it was read last; none where nobody rides, or it is not read yet
 * @param contact whose contact points are on all bikes that are compared
 * @param parts the path of the file of stock parts; empty for none
 * @param at where bikes are drawn over each other
 * @param onlyColumns whether only the numbers of the table are compared
 * @param beside what stands side by side
 */
public record RackChoices(
        List<RackColumn> columns,
        LengthUnit lengths,
        String riderPath,
        Optional<Rider> rider,
        Hands hands,
        Contact contact,
        String parts,
        BikeDrawing.At at,
        boolean onlyColumns,
        Beside beside) {
    /** The numbers that are shown until a person chooses others. */
    public static final List<String> USUAL = List.of(
            "frame.stackMm",
            "frame.reachMm",
            "frame.headAngleDeg",
            "frame.seatAngleDeg",
            "frame.chainstayMm",
            "frame.bbDropMm",
            "fork.offsetMm",
            "wheels.both.beadSeatMm",
            "wheels.both.tyreMm",
            "charted.wheelbaseMm",
            "charted.trailMm",
            "trailMm",
            "wheelbaseMm",
            "frontCentreMm",
            "toeRoomMm",
            "crank.lengthMm",
            "cockpit.stemLengthMm",
            "cockpit.stemAngleDeg",
            "cockpit.spacersMm",
            "handXMm",
            "handYMm");

    /**
     * Whose contact points are on bikes that are compared.
     *
     * @param key the bike's, as {@link RackBike.Filed#key}; empty for any other than a bike's
     */
    record Contact(Whose whose, String key) {
        static final Contact OWN = new Contact(Whose.OWN, "");
        static final Contact RIDER = new Contact(Whose.RIDER, "");

        static Contact of(RackBike bike) {
            return new Contact(Whose.BIKE, keyOf(bike));
        }

        boolean isOf(RackBike bike) {
            return whose == Whose.BIKE && key.equals(keyOf(bike));
        }

        private static String keyOf(RackBike bike) {
            String filed = bike.filed().key();
            return filed.isEmpty() ? bike.id() : filed;
        }

        static Contact read(String word) {
            return switch (word) {
                case "" -> OWN;
                case "rider" -> RIDER;
                default -> new Contact(Whose.BIKE, word);
            };
        }

        String word() {
            return whose == Whose.RIDER ? "rider" : key;
        }

        Contact moved(String from, String to) {
            return whose == Whose.BIKE && key.equals(from) ? new Contact(whose, to) : this;
        }
    }

    /** Whose contact points. */
    enum Whose {
        OWN,
        RIDER,
        BIKE
    }

    /** What stands side by side. */
    enum How {
        NOTHING,
        COMPARED,
        MATCHED
    }

    /**
     * The bikes that stand side by side, until others are put there.
     *
     * @param ids in order
     */
    record Beside(How how, List<String> ids) {
        static final Beside NOTHING = new Beside(How.NOTHING, List.of());

        Beside {
            ids = List.copyOf(ids);
        }

        Beside replaced(String id, String by) {
            return new Beside(
                    how, ids.stream().map(one -> one.equals(id) ? by : one).toList());
        }
    }

    public RackChoices {
        columns = List.copyOf(columns);
    }

    /** The usual columns in millimetres; nobody rides; nothing stands side by side. */
    static RackChoices first() {
        return new RackChoices(
                USUAL.stream().map(RackColumn::of).toList(),
                LengthUnit.MILLIMETRE,
                "",
                Optional.empty(),
                Hands.HOODS,
                Contact.OWN,
                "",
                BikeDrawing.At.BB,
                false,
                Beside.NOTHING);
    }

    RackSeat seat() {
        return new RackSeat(rider, hands);
    }

    /** The keys of the measures among the columns. */
    List<String> measured() {
        return columns.stream()
                .filter(column -> !column.isTyped())
                .map(RackColumn::key)
                .toList();
    }

    RackChoices withColumns(List<String> keys) {
        return new RackChoices(
                keys.stream().map(RackColumn::of).toList(),
                lengths,
                riderPath,
                rider,
                hands,
                contact,
                parts,
                at,
                onlyColumns,
                beside);
    }

    RackChoices in(LengthUnit unit) {
        return new RackChoices(columns, unit, riderPath, rider, hands, contact, parts, at, onlyColumns, beside);
    }

    RackChoices seating(String path, Optional<Rider> one) {
        return new RackChoices(columns, lengths, path, one, hands, contact, parts, at, onlyColumns, beside);
    }

    RackChoices with(Hands where) {
        return new RackChoices(columns, lengths, riderPath, rider, where, contact, parts, at, onlyColumns, beside);
    }

    RackChoices with(Contact whose) {
        return new RackChoices(columns, lengths, riderPath, rider, hands, whose, parts, at, onlyColumns, beside);
    }

    RackChoices withParts(String path) {
        return new RackChoices(columns, lengths, riderPath, rider, hands, contact, path, at, onlyColumns, beside);
    }

    RackChoices drawn(BikeDrawing.At where) {
        return new RackChoices(columns, lengths, riderPath, rider, hands, contact, parts, where, onlyColumns, beside);
    }

    RackChoices comparing(boolean onlyTheColumns) {
        return new RackChoices(columns, lengths, riderPath, rider, hands, contact, parts, at, onlyTheColumns, beside);
    }

    RackChoices with(Beside bikes) {
        return new RackChoices(columns, lengths, riderPath, rider, hands, contact, parts, at, onlyColumns, bikes);
    }

    /** As it is kept from one start to the next. */
    RackView.Chosen kept() {
        return new RackView.Chosen(riderPath, hands.word(), contact.word(), parts, at.name(), onlyColumns);
    }

    /**
     * As it was kept; words that are not known any more leave what stands at first.
     *
     * @throws Refusal where a column is not known any more
     */
    static RackChoices recalled(RackView view) {
        RackChoices usual = first().in(LengthUnit.of(view.lengths()).orElse(LengthUnit.MILLIMETRE));
        RackView.Chosen chosen = view.chosen();
        RackChoices choices = usual.seating(chosen.rider(), Optional.empty())
                .with(chosen.hands().isEmpty() ? Hands.HOODS : Hands.of(chosen.hands()))
                .with(Contact.read(chosen.contact()))
                .withParts(chosen.parts())
                .drawn(chosen.at().isEmpty() ? BikeDrawing.At.BB : BikeDrawing.At.valueOf(chosen.at()))
                .comparing(chosen.onlyColumns());
        return view.columns().isEmpty() ? choices : choices.withColumns(view.columns());
    }
}
